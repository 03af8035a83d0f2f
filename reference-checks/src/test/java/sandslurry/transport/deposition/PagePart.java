package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A part of the theory page that a test writes, between {@code <!-- NAME -->} and {@code <!-- end
 * -->}. {@code -Dpages.renew=true} writes it anew.
 */
final class PagePart {
  private static final Path PAGE = Path.of("..", "docs", "theory", "deposition-velocity.md");

  private PagePart() {}

  /** Holds that the part is as given, or writes it. */
  static void isCurrent(String name, String part) throws IOException {
    String page = Files.readString(PAGE);
    String start = "<!-- " + name + " -->\n";
    int from = page.indexOf(start);
    assertThat(from).as("the page has a part %s", name).isNotNegative();
    from += start.length();
    int to = page.indexOf("<!-- end -->", from);
    assertThat(to).as("the part %s ends", name).isNotNegative();
    isCurrent(PAGE, page.substring(0, from) + part + page.substring(to));
  }

  /** Holds that a file is as given, or writes it. */
  static void isCurrent(Path file, String text) throws IOException {
    if (Boolean.getBoolean("pages.renew")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } else {
      assertThat(Files.readString(file))
          .as("%s; -Dpages.renew=true writes it anew", file)
          .isEqualTo(text);
    }
  }
}
