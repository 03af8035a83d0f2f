package sandslurry.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.InstanceofCheck;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.ReferencedClassObject;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sandslurry.units.Measure;

class ArchitectureTest {
  /** From the ground up: a package uses only those before it. */
  private static final List<String> ORDER =
      List.of(
          "units",
          "numeric",
          "fact",
          "correlation",
          "material",
          "settling",
          "pipe",
          "transport",
          "pump",
          "separation",
          "diagnosis",
          "plant",
          "design",
          "assessment",
          "study",
          "report",
          "library");

  /** Sums of kinds that a design or a result is made of. */
  private static final Set<String> SEALED =
      Set.of(
          "sandslurry.plant.unit.PlantUnit",
          "sandslurry.plant.network.Unit",
          "sandslurry.plant.network.SteadyState",
          "sandslurry.design.station.PumpSpec",
          "sandslurry.design.material.CarrierSpec",
          "sandslurry.design.material.MixtureSpec",
          "sandslurry.material.liquid.Rheology");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .importUrl(Measure.class.getProtectionDomain().getCodeSource().getLocation());

  private static String in(String name) {
    return "sandslurry." + name + "..";
  }

  @Test
  void everyPackageHasItsPlaceInTheOrder() {
    assertThat(CLASSES).hasSizeGreaterThan(100);
    TreeSet<String> packages =
        CLASSES.stream()
            .map(c -> c.getPackageName().split("\\.")[1])
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(packages).isSubsetOf(ORDER);
  }

  @Test
  void aPackageUsesOnlyThoseBelowIt() {
    for (int i = 0; i < ORDER.size() - 1; i++) {
      List<String> above = new ArrayList<>();
      ORDER.subList(i + 1, ORDER.size()).forEach(name -> above.add(in(name)));
      noClasses()
          .that()
          .resideInAPackage(in(ORDER.get(i)))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(above.toArray(String[]::new))
          .allowEmptyShould(true)
          .check(CLASSES);
    }
  }

  @Test
  void packagesAreFreeOfCycles() {
    slices().matching("sandslurry.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void roomsWithinAPackageAreFreeOfCycles() {
    slices().matching("sandslurry.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void noRoomHoldsMoreThanAScreenful() {
    Map<String, Long> sizes =
        CLASSES.stream()
            .filter(JavaClass::isTopLevelClass)
            .filter(type -> !type.getSimpleName().equals("package-info"))
            .collect(Collectors.groupingBy(JavaClass::getPackageName, Collectors.counting()));
    assertThat(sizes)
        .allSatisfy((room, files) -> assertThat(files).as(room).isLessThanOrEqualTo(25));
  }

  @Test
  void nothingKnowsAScreen() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.awt..", "javax.swing..")
        .check(CLASSES);
  }

  @Test
  void onlyNumericUsesTheLibraryOfMathematics() {
    noClasses()
        .that()
        .resideOutsideOfPackage(in("numeric"))
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.apache.commons.math3..")
        .check(CLASSES);
  }

  @Test
  void kernelsComputeInPlainNumbersAndNotInQuantities() {
    noClasses()
        .that()
        .resideInAnyPackage(
            in("numeric"),
            in("correlation"),
            in("material"),
            in("settling"),
            in("pipe"),
            in("transport"),
            in("pump"),
            in("separation"),
            in("diagnosis"),
            in("plant"))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javax.measure..", "tech.units..", "si.uom..")
        .check(CLASSES);
  }

  @Test
  void nothingPrints() {
    GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(CLASSES);
  }

  @Test
  void onlyTheDesignFileAndTheViewOfResultsKnowJson() {
    classes()
        .that()
        .resideOutsideOfPackages(in("design"))
        .and()
        .doNotHaveSimpleName("JsonView")
        .should()
        .onlyDependOnClassesThat()
        .resideOutsideOfPackage("com.fasterxml..")
        .check(CLASSES);
  }

  @Test
  void onlyTheDesignFileTouchesTheDisk() {
    noClasses()
        .that()
        .doNotHaveSimpleName("DesignDocument")
        .and()
        .doNotHaveSimpleName("WholeFile")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.nio.file..")
        .check(CLASSES);
  }

  /** A number must not be written in other figures, nor a name spelled otherwise, abroad. */
  @Test
  void noTextFollowsTheLanguageOfTheComputer() {
    noClasses()
        .should()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "formatted", Object[].class)
        .orShould()
        .callMethod(String.class, "toLowerCase")
        .orShould()
        .callMethod(String.class, "toUpperCase")
        .check(CLASSES);
  }

  /**
   * What differs between kinds is said by the kinds, or by a match that names each: a kind that is
   * forgotten then does not compile. Compiled code says {@code instanceof}, a cast and {@code
   * Class::isInstance} alike by the name of the class.
   */
  @Test
  void nothingOutsideTheirPackageAsksForAKind() {
    List<String> kinds =
        CLASSES.stream()
            .filter(type -> SEALED.contains(type.getFullName()))
            .flatMap(type -> type.getAllSubclasses().stream())
            .map(JavaClass::getFullName)
            .toList();
    assertThat(kinds).hasSizeGreaterThan(20);
    noClasses()
        .should(
            ArchCondition.from(
                DescribedPredicate.describe(
                    "ask for a kind of another package",
                    (JavaClass type) ->
                        type.getInstanceofChecks().stream()
                                .map(InstanceofCheck::getRawType)
                                .anyMatch(asked -> isKindElsewhere(kinds, asked, type))
                            || type.getReferencedClassObjects().stream()
                                .map(ReferencedClassObject::getRawType)
                                .anyMatch(asked -> isKindElsewhere(kinds, asked, type)))))
        .check(CLASSES);
  }

  private static boolean isKindElsewhere(List<String> kinds, JavaClass asked, JavaClass by) {
    return kinds.contains(asked.getFullName())
        && !asked.getPackageName().equals(by.getPackageName());
  }
}
