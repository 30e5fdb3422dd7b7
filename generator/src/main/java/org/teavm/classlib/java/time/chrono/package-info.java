/** Names that the signatures of {@code java.time} bring with them. */
package org.teavm.classlib.java.time.chrono;
