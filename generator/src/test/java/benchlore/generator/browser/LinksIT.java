package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every address written anywhere in the site leads to a file, and every fragment to a place. */
class LinksIT {
  @Test
  void everyLinkLeadsSomewhere() {
    assertEquals("", String.join("\n", new Links(SiteFolder.fromBuild()).broken()));
  }

  @Test
  void brokenLinksAreTold(@TempDir Path folder) throws IOException {
    Files.createDirectory(folder.resolve("a"));
    Files.writeString(folder.resolve("a/b.html"), "<h1 id='top'>B</h1><a href='../index.html#x'>");
    Files.writeString(folder.resolve("style.css"), "p { background: url('gone.png') }");
    Files.writeString(
        folder.resolve("index.html"),
        """
        <h1 id="x">A</h1><a href="#x">ok</a><a href="a/b.html#top">ok</a><a href="#y">bad</a>
        <a href="a/c.html">bad</a><a href="a/b.html#bottom">bad</a><a href="../up.html">bad</a>
        <img src="p.png" srcset="a/b.html 1x, q.png 2x"><a href="https://wood.example/">bad</a>
        <svg><use href="#none"/><rect fill="url(#pale)"/></svg><p aria-labelledby="x z"></p>
        <b id="x"></b><a href="/root.html">bad</a><a href="a/">bad</a>
        """);
    assertEquals(
        """
        index.html: #y: no such place in index.html
        index.html: a/c.html: no such file
        index.html: a/b.html#bottom: no such place in a/b.html
        index.html: ../up.html: leaves the folder
        index.html: p.png: no such file
        index.html: q.png: no such file
        index.html: https://wood.example/: leaves the folder
        index.html: #none: no such place in index.html
        index.html: url(#pale): no such place in index.html
        index.html: aria-labelledby z: no such place in index.html
        index.html: id x stands twice
        index.html: /root.html: leaves the folder
        index.html: a/: no such file
        style.css: gone.png: no such file"""
            .lines()
            .sorted()
            .toList(),
        new Links(new SiteFolder(folder)).broken().stream().sorted().toList());
  }

  @Test
  void theDemoSiteHasLinksToCheck() {
    assertTrue(new Links(SiteFolder.fromBuild()).checked() > 1000);
  }
}
