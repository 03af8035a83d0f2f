package sandslurry.correlation;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Constructor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sandslurry.plant.pen.ManureProductions;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.separation.capture.CaptureRelations;
import sandslurry.separation.channel.ScourModels;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.friction.NonNewtonianModels;
import sandslurry.transport.headloss.HeadLosses;
import sandslurry.units.UnitSystem;

/** The page of all correlations is what the correlations say of themselves. */
class CorrelationPageTest {
  private static final Path PAGE = Path.of("..", "docs", "theory", "correlations.md");

  private static final List<Family<?>> FAMILIES =
      List.of(
          SettlingVelocities.FAMILY,
          HinderedSettlings.FAMILY,
          NonNewtonianModels.TRANSITIONS,
          NonNewtonianModels.TURBULENT,
          DepositionVelocities.FAMILY,
          HeadLosses.FAMILY,
          SolidsDeratings.FAMILY,
          CaptureRelations.FAMILY,
          ScourModels.FAMILY,
          HydrocycloneModels.FAMILY,
          HydrocycloneModels.RULES,
          ManureProductions.FAMILY);

  private static String page() {
    StringBuilder page =
        new StringBuilder(
            """
            # Correlations

            Every published correlation that the program knows, by what it gives; the first of a family is its default.
            Written from what the classes say of themselves. Symbols are explained in the Javadoc of each class and on
            the page of its subject. A limit marked *used here* is not published: it is the span of the data, or our own.
            """);
    for (Family<?> family : FAMILIES) {
      page.append("\n## ").append(capital(family.what())).append("\n");
      family.all().forEach(one -> page.append(entry(one.about())));
    }
    page.append("\n## Correlations that have no family\n");
    others().forEach(one -> page.append(entry(one.about())));
    return page.toString();
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String entry(About about) {
    return """

    **%s** (`%s`)

        %s

    Limits: %s.
    Source: %s.
    """
        .formatted(about.name(), about.id(), about.equation(), limits(about), about.citation());
  }

  /** The classes that stand in no family, in the order of their names. */
  private static List<Correlation> others() {
    Set<Class<?>> known =
        FAMILIES.stream()
            .flatMap(family -> family.all().stream())
            .map(Object::getClass)
            .collect(Collectors.toSet());
    return new ClassFileImporter()
        .importUrl(Correlation.class.getProtectionDomain().getCodeSource().getLocation()).stream()
            .filter(type -> type.isAssignableTo(Correlation.class))
            .filter(type -> !type.isInterface())
            .filter(type -> !type.getModifiers().contains(JavaModifier.ABSTRACT))
            .sorted(Comparator.comparing(JavaClass::getSimpleName))
            .map(JavaClass::reflect)
            .filter(type -> !known.contains(type))
            .map(CorrelationPageTest::instance)
            .toList();
  }

  private static Correlation instance(Class<?> type) {
    try {
      Constructor<?> constructor = type.getDeclaredConstructor();
      constructor.setAccessible(true);
      return (Correlation) constructor.newInstance();
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(type + " belongs to no family and cannot be made alone", e);
    }
  }

  private static String limits(About about) {
    return about.bounds().isEmpty()
        ? "none published"
        : about.bounds().stream()
            .map(b -> b.describe(UnitSystem.METRIC) + (b.published() ? "" : " (*used here*)"))
            .collect(Collectors.joining("; "));
  }

  @Test
  void thePageIsCurrent() throws Exception {
    if (Boolean.getBoolean("golden.renew")) {
      Files.writeString(PAGE, page());
    }
    assertThat(Files.readString(PAGE))
        .as("renew with -Dgolden.renew=true, see DEVELOPERS.md")
        .isEqualTo(page());
  }

  /** What a source says of memory in its own words, no page of answers would hear of. */
  @Test
  void whatDecidesFromMemoryIsDeclaredAndNotWritten() {
    for (Family<?> family : FAMILIES) {
      for (Correlation one : family.all()) {
        assertThat(one.citation().where())
            .as(one.id())
            .doesNotContainPattern(
                "(coefficients?|constants?|exponents?|index|values?|plateau) from memory,"
                    + " unverified");
      }
    }
  }

  @Test
  void aMemberIsFoundByItsKey() {
    for (Family<?> family : FAMILIES) {
      for (Correlation one : family.all()) {
        assertThat(family.find(one.id()).map(Correlation::name)).contains(one.name());
      }
      assertThat(family.find("no such key")).isEmpty();
    }
  }
}
