package sandslurry.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.library.Amounts.degC;
import static sandslurry.library.Amounts.ft;
import static sandslurry.library.Amounts.in;
import static sandslurry.library.Amounts.lps;
import static sandslurry.library.Amounts.m;
import static sandslurry.library.Amounts.mm;
import static sandslurry.library.Amounts.mps;
import static sandslurry.library.Amounts.percent;
import static sandslurry.library.Amounts.rpm;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.golden.Shipped;
import sandslurry.units.Measure;

/** The library's face gives what the design file gives, and refuses what it refuses. */
class LibraryFaceTest {
  private static final Path SIGNATURES = Path.of("src/test/resources/library-signatures.txt");

  private static final Mixture SLURRY =
      Mixture.ofWater(Measure.TEMPERATURE.of(60, "degF")).sand("ASTM C144").byVolume(percent(3));

  private static Line parlor() {
    return Line.of(Line.pipe("ASTM D1785", "4 in", "Sch 40"))
        .length(ft(300))
        .rise(ft(6))
        .roughness(mm(0.1))
        .carrying(SLURRY);
  }

  /** The shipped example, once from its file and once in code. */
  @Test
  void aDesignBuiltInCodeIsAssessedLikeTheFile() {
    Assessment file = Shipped.assessment("parlor-line.json");
    double limit =
        file.line()
            .orElseThrow()
            .states()
            .get(0)
            .runs()
            .get(0)
            .deposition()
            .orElseThrow()
            .limitMps();

    assertThat(Measure.SPEED.si(parlor().depositionVelocity())).isEqualTo(limit, within(1e-12));
  }

  @Test
  void theUnitOfAnArgumentDoesNotMatter() {
    Line metric =
        Line.of(Line.pipe("ASTM D1785", "4 in", "Sch 40"))
            .length(m(91.44))
            .rise(m(1.8288))
            .roughness(mm(0.1))
            .carrying(SLURRY);

    assertThat(Measure.LENGTH.si(metric.headLoss(mps(2.5)).total()))
        .isEqualTo(Measure.LENGTH.si(parlor().headLoss(mps(2.5)).total()), within(1e-9));
  }

  /** A line is read and checked once; what it answers must not depend on what was asked before. */
  @Test
  void aLineAnswersTheSameWhateverItWasAskedBefore() {
    Line line = parlor();
    for (double velocity : new double[] {2.5, 1, 4, 3}) {
      assertThat(Measure.LENGTH.si(line.headLoss(mps(velocity)).total()))
          .isEqualTo(Measure.LENGTH.si(parlor().headLoss(mps(velocity)).total()));
    }
    assertThatThrownBy(() -> line.headLoss(mps(1e-3))).isInstanceOf(DesignProblems.class);
    assertThatThrownBy(() -> line.headLoss(mps(1e4))).isInstanceOf(DesignProblems.class);
  }

  @Test
  void headGrowsWithRiseByTheRiseOfTheSlurryItself() {
    double level = Measure.LENGTH.si(parlor().rise(m(0)).headLoss(mps(2.5)).total());
    double risen = Measure.LENGTH.si(parlor().rise(m(0.2)).headLoss(mps(2.5)).total());

    assertThat(risen - level).isEqualTo(0.2, within(0.01));
  }

  @Test
  void residenceTimeOfALaneIsItsVolumeOverTheFlowRate() {
    Lane.Settled settled =
        Lane.of(m(20), m(3), percent(0.1))
            .waterDepth(mm(500))
            .sandStorageDepth(mm(200))
            .settle(lps(30), SLURRY);

    assertThat(Measure.TIME.si(settled.residenceTime()))
        .isEqualTo(20 * 3 * 0.5 / 0.030, within(1.0));
    assertThat(Measure.SPEED.si(settled.overflowRate())).isEqualTo(0.030 / 60, within(1e-9));
  }

  @Test
  void everythingThatIsWrongIsSaidAtOnce() {
    assertThatThrownBy(
            () ->
                Line.of(Line.pipe("ASME B36.10M", "6 in", "Sch 40"))
                    .length(ft(-3))
                    .carrying(Mixture.ofWater(degC(90)).sand(mm(300)).byVolume(percent(50)))
                    .depositionVelocity())
        .isInstanceOfSatisfying(
            DesignProblems.class,
            e ->
                assertThat(e.problems())
                    .extracting(problem -> problem.field())
                    .contains(
                        "/lines/0/route/runs/0/length",
                        "/carrier/temperature",
                        "/sand/d50",
                        "/lines/0/mixture/volumeFraction"));
    assertThatThrownBy(() -> DesignDraft.titled("empty").assess())
        .isInstanceOf(DesignProblems.class)
        .hasMessageContaining("/sand")
        .hasMessageContaining("/lines");
  }

  @Test
  void aPumpWithoutACurveIsRefused() {
    assertThatThrownBy(() -> Pump.of(rpm(1750), in(12)).dutyPoints(parlor()))
        .isInstanceOf(DesignProblems.class)
        .hasMessageContaining("/lines/0/pump/curve");
  }

  /**
   * What others compile against: a change here is a line in docs/changes.md. {@code
   * -Dlibrary.renew=true} writes the file anew.
   */
  @Test
  void theSignaturesOfTheFaceAreThoseKept() throws IOException {
    String now =
        new ClassFileImporter()
            .importPackages("sandslurry.library").stream()
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .filter(type -> type.getSource().orElseThrow().getUri().getPath().contains("class"))
                .filter(type -> !type.getSimpleName().endsWith("Test"))
                .sorted(Comparator.comparing(JavaClass::getName))
                .map(LibraryFaceTest::signatures)
                .collect(Collectors.joining());
    if (Boolean.getBoolean("library.renew")) {
      Files.writeString(SIGNATURES, now);
    }
    assertThat(Files.readString(SIGNATURES)).isEqualTo(now);
  }

  private static String signatures(JavaClass type) {
    return type.getName()
        + "\n"
        + type.getMembers().stream()
            .filter(member -> member.getModifiers().contains(JavaModifier.PUBLIC))
            .map(LibraryFaceTest::signature)
            .sorted()
            .map(text -> "  " + text + "\n")
            .collect(Collectors.joining());
  }

  private static String signature(JavaMember member) {
    String text = member.getDescription().replaceAll("<sandslurry\\.library\\.|>$", "");
    return member instanceof JavaMethod method
        ? text + ": " + method.getReturnType().getName()
        : text;
  }
}
