package sandslurry.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.design.document.DesignDocument;
import sandslurry.pipe.catalogue.PipeSystem;
import sandslurry.report.block.Block;
import sandslurry.report.section.SizingSection;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The worked sizings of the guide are what the program gives, and the one by hand is right. */
class SizingGuideTest {
  private static final Path GUIDE = Path.of("..", "docs", "guide", "sizing.md");
  private static final Set<PipeSystem> PVC = EnumSet.of(PipeSystem.ASTM_D1785);
  private static final NewPen PEN =
      new NewPen(
          500,
          InUnit.KILOGRAM_PER_DAY.si(35),
          InUnit.KILOGRAM_PER_DAY.si(20),
          InUnit.HOUR.si(8),
          150,
          4,
          0.02,
          283.15);

  private static Sizing ofPen;

  @BeforeAll
  static void size() {
    ofPen = Sizing.withFlow(PEN.design(UnitSystem.METRIC, "ASTM C33"), PVC);
  }

  private static List<List<String>> rows(Sizing sizing, UnitSystem units) {
    Block.Table table = (Block.Table) SizingSection.fits(sizing, units, 99).get(0);
    return table.rows();
  }

  private static Sizing parlor(Function<DesignDocument, DesignDocument> change) throws Exception {
    DesignDocument line =
        DesignDocument.load(Path.of("..", "docs", "examples", "parlor-line.json"));
    return Sizing.of(change.apply(line), PVC);
  }

  private static List<String> names(Stream<SizedPipe> pipes) {
    return pipes.map(p -> p.pipe().size() + " " + p.pipe().wallClass()).toList();
  }

  @Test
  void theTableOfTheNewPenIsThatOfTheProgram() throws IOException {
    List<List<String>> printed =
        Files.readAllLines(GUIDE).stream()
            .filter(line -> line.matches("\\| \\d+ in Sch .*"))
            .map(line -> Arrays.stream(line.split("\\|")).skip(1).map(String::strip).toList())
            .toList();
    assertThat(printed).hasSize(3);
    List<List<String>> rows = rows(ofPen, UnitSystem.METRIC);
    for (List<String> line : printed) {
      List<String> row =
          rows.stream().filter(r -> r.get(0).equals(line.get(0))).findFirst().orElseThrow();
      // Standard and verdict are left out of the guide.
      assertThat(line.subList(1, line.size()))
          .containsExactlyElementsOf(row.subList(3, row.size()));
    }
  }

  @Test
  void theParlorLineFitsOnePipeWithItsPumpAndFourWithout() throws Exception {
    Sizing with = parlor(line -> line);
    assertThat(names(with.fits().stream())).containsExactly("4 in Sch 40");
    assertThat(rows(with, UnitSystem.US).get(0)).contains("309 to 363");
    Sizing without = parlor(line -> line.without("/lines/0/pump"));
    assertThat(names(without.fits().stream()))
        .startsWith("4 in Sch 40")
        .contains("3 in Sch 40", "3 in Sch 80");
    PumpWanted wanted = PumpWanted.of(without.fits().get(0)).orElseThrow();
    String guide = Files.readString(GUIDE).replaceAll("\\s+", " ");
    assertThat(guide)
        .contains(UnitSystem.US.showAtLeast(Kind.HEAD, wanted.slurryHeadM()) + " of slurry")
        .contains(UnitSystem.US.showAtLeast(Kind.HEAD, wanted.waterHeadM().getAsDouble()));
  }

  @Test
  void runsGivenByTheirBoreAreSizedAnewWhenNoneLiesInAPipe() throws Exception {
    Sizing inPipe = parlor(line -> line.without("/lines/0/pump"));
    Sizing byBore =
        parlor(
            line ->
                line.without("/lines/0/pump")
                    .without("/lines/0/route/runs/0/pipe")
                    .with("/lines/0/route/runs/0/bore", "600 mm"));
    assertThat(names(byBore.fits().stream())).isEqualTo(names(inPipe.fits().stream()));
  }

  @Test
  void aDesignWithoutALineIsToldSo() throws Exception {
    Sizing none = parlor(line -> line.without("/lines"));
    assertThat(none.fits()).isEmpty();
    assertThat(none.problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.field()).isEqualTo("/lines"));
  }

  /** Each step of the third sizing, from the numbers printed there. */
  @Test
  void theNewPenFollowedByHand() {
    double manure = 0.616 * 35 + 46.2;
    double dry = 0.0874 * 35 + 5.6;
    double liquor = 500 * dry / 0.02;
    double sand = 500 * 20 / 2650.0;
    double mixture = liquor / 1006 + sand;
    assertThat(manure).isCloseTo(67.76, within(1e-9));
    assertThat(dry).isCloseTo(8.659, within(1e-9));
    assertThat(liquor).isCloseTo(216_475, within(0.5));
    assertThat(liquor - 500 * manure).isCloseTo(182_595, within(0.5));
    assertThat(PEN.dailyM3()).isCloseTo(mixture, within(0.3));
    assertThat(sand / mixture).isCloseTo(0.0172, within(5e-5));
    SizedPipe four =
        ofPen.fits().stream()
            .filter(p -> p.pipe().size().equals("4 in") && p.pipe().wallClass().equals("Sch 40"))
            .findFirst()
            .orElseThrow();
    double area = Math.PI / 4 * Math.pow(four.pipe().largestBoreM(), 2);
    double least = four.assessment().design().oneLine().flow().minimumM3ps();
    double designed = four.assessment().design().oneLine().flow().designM3ps();
    assertThat(area).isCloseTo(0.008213, within(5e-6));
    assertThat(four.leastVelocityMps().getAsDouble()).isCloseTo(least / area, within(1e-6));
    assertThat(mixture / designed / 3600).isCloseTo(2.61, within(0.005));
    double head = four.headM().getAsDouble();
    double power = (1006 + 0.0172 * (2650 - 1006)) * 9.80665 * designed * head;
    assertThat(four.hydraulicW().getAsDouble()).isCloseTo(power, within(0.002 * power));
    assertThat(four.flushM3().getAsDouble())
        .isCloseTo(2 * Math.PI / 4 * Math.pow(four.pipe().meanBoreM(), 2) * 150, within(0.005));
  }
}
