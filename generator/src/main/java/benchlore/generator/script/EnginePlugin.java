package benchlore.generator.script;

import org.teavm.vm.spi.TeaVMHost;
import org.teavm.vm.spi.TeaVMPlugin;

/** Tells the compiler to JavaScript what it may leave out; it finds this class as a service. */
public final class EnginePlugin implements TeaVMPlugin {
  @Override
  public void install(TeaVMHost host) {
    host.add(new NullChecks());
    host.add(new EnumSwitches());
  }
}
