package sandslurry.separation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Evaluation;
import sandslurry.assessment.feed.FeedEvaluation;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.plant.PlantSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.material.liquid.Carrier;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.StandardSand;
import sandslurry.plant.Range;
import sandslurry.separation.box.SandStack;
import sandslurry.separation.channel.PartFullPipe;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.SettlingLane;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.ShearSettling;
import sandslurry.units.Measure;

/**
 * What the trade takes for granted, against what the formulas give on dairies of our own invention.
 * Every fact here is common practice, no source.
 */
class TradeFactsTest {
  private static double si(Measure<?> measure, double value, String unit) {
    return measure.entry(unit).toSi(value);
  }

  /**
   * Common practice, no source: recovered sand drains at least half a day before it is bedded
   * again. Clean concrete sand gives up its free water faster than that in a stack of 6 ft, so half
   * a day is enough for it; with a tenth of the permeability, as fines and organic matter leave it,
   * half a day is of the order of what it takes.
   */
  @Test
  void halfADayDrainsAStackOfConcreteSand() {
    double d10 = StandardSand.ASTM_C33_FINE_AGGREGATE.middle().sizePassingM(0.10);
    double permeability = SandStack.permeabilityMps(d10).value();
    double halfADay = si(Measure.TIME, 12, "h");
    double height = si(Measure.LENGTH, 6, "ft");
    assertThat(SandStack.leastDrainTimeS(height, 0.26, permeability)).isLessThan(halfADay);
    ours(SandStack.leastDrainTimeS(height, 0.26, permeability / 10) / halfADay)
        .isBetween(0.05, 2.0);
  }

  /**
   * Common practice, no source: a gravity return of 6 in for the separated liquid and an overflow
   * of 8 in serve a dairy of some hundred cows. At 1 % and n = 0.013 they carry, three quarters
   * full, the 15 m3/h that 500 cows of our scenario take back and the 45 m3/h of a wash that runs
   * besides.
   */
  @Test
  void sixInchReturnAndEightInchOverflowServeSomeHundredCows() {
    PartFullPipe back = new PartFullPipe(si(Measure.LENGTH, 6.065, "in"), 0.01, 0.013);
    PartFullPipe overflow = new PartFullPipe(si(Measure.LENGTH, 7.981, "in"), 0.01, 0.013);
    double wanted = si(Measure.FLOW, 15, "m3/h");
    ours(back.atDepth(0.75).flowM3ps()).isBetween(wanted, 5 * wanted);
    ours(overflow.atDepth(0.75).flowM3ps()).isBetween(3 * wanted, 3 * 5 * wanted);
  }

  /**
   * Common practice, no source: the same two pipes, judged as lines by gravity with what separation
   * leaves of the sand, finer than 0.3 mm. A thin separated liquid runs in both without a FAIL at 2
   * %, and the window of each holds flow rates of the order of those of some hundred cows.
   */
  @Test
  void bothPipesAreJudgedToServeSomeHundredCows() throws Exception {
    double wanted = si(Measure.FLOW, 15, "m3/h");
    for (String bore : List.of("6.065 in", "7.981 in")) {
      Design design =
          DesignDocument.load(Path.of("..", "docs", "examples", "auger-and-gravity-return.json"))
              .with("/gravityRun/bore", bore)
              .with("/gravityRun/slope", "2 %")
              .with("/gravityRun/flow", "15 m3/h")
              .with("/gravityRun/leastFlow", "8 m3/h")
              .without("/sand/gradation")
              .insert("/sand/gradation", 0, "{\"size\": \"0.3 mm\", \"passing\": \"100 %\"}")
              .insert("/sand/gradation", 1, "{\"size\": \"0.15 mm\", \"passing\": \"60 %\"}")
              .insert("/sand/gradation", 2, "{\"size\": \"0.075 mm\", \"passing\": \"5 %\"}")
              .read()
              .design()
              .orElseThrow();
      GravityRun run =
          FeedEvaluation.gravityRun(Materials.of(design), design.feed().gravityRun().orElseThrow());
      assertThat(run.worst().orElseThrow().severity()).isNotEqualTo(Severity.FAIL);
      ours(run.window().orElseThrow().holdsM3ps()).isBetween(wanted, 15 * wanted);
      assertThat(run.window().orElseThrow().carriesFromM3ps()).isLessThan(wanted);
    }
  }

  private static Design shipped(String file) throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", file))
        .read()
        .design()
        .orElseThrow();
  }

  /**
   * Common practice, no source: 6 to 8 in of sand lie in a stall, and it is topped up every week or
   * two. The bed of a stall of 4 ft by 5.5 ft, at the bulk density that we give a heap, holds two
   * weeks and more of the most that our scenarios use a stall, and no half year of the least.
   */
  @Test
  void sixToEightInchesOfSandLastAStallFromOneToppingUpToTheNext() throws Exception {
    double area = si(Measure.LENGTH, 4, "ft") * si(Measure.LENGTH, 5.5, "ft");
    for (String file : List.of("closed-loop-dairy.json", "pen-to-storage.json")) {
      Design design = shipped(file);
      double bulk = design.sand().densityKgM3() * (1 - design.plant().orElseThrow().porosity());
      ours(bulk).isBetween(1400.0, 1800.0);
      for (PlantSpec.PenSpec pen : design.plant().orElseThrow().pens()) {
        Range used = pen.pen().sandKgps();
        if (!(pen.pen().stalls() > 0)) {
          continue;
        }
        double most = area * si(Measure.LENGTH, 8, "in") * bulk / used.low();
        double least = area * si(Measure.LENGTH, 6, "in") * bulk / used.high();
        assertThat(least).as(pen.pen().name()).isGreaterThan(si(Measure.TIME, 14, "d"));
        assertThat(most).as(pen.pen().name()).isLessThan(si(Measure.TIME, 180, "d"));
      }
    }
  }

  /**
   * Common practice, no source: wash water runs a few times a day for about an hour. In three such
   * hours our wash line carries the sand that some hundred stalls lose in a day, 22 kg each, and
   * each hour moves many volumes of the line, so that it ends clean.
   */
  @Test
  void threeHoursOfWashCarryTheSandOfSomeHundredStalls() throws Exception {
    Design design = shipped("parlor-line.json");
    LineResult line = Evaluation.assess(design).line().orElseThrow();
    LineState state = line.at(FlowCase.DESIGN).orElseThrow();
    double hour = si(Measure.TIME, 1, "h");
    ours(3 * hour * state.sandRateKgps() / 22).isBetween(200.0, 2000.0);
    assertThat(hour * state.flowM3ps() / line.lineVolumeM3()).isGreaterThan(20);
  }

  /**
   * Common practice, no source: a pit is mixed a few times a day only. In the eight hours between,
   * all sand that a lane lets through falls to the floor of 3 m of thin liquor, so that a pump that
   * runs without the mixer leaves it there; in thick manure half of it hangs.
   */
  @Test
  void betweenTwoMixingsThinLiquorLosesItsSandAndThickManureKeepsIt() {
    double hours = si(Measure.TIME, 8, "h");
    assertThat(fallTimeS(0.1e-3, 0.02)).isLessThan(hours);
    assertThat(fallTimeS(0.3e-3, 0.02)).isLessThan(hours / 10);
    assertThat(fallTimeS(0.1e-3, 0.09)).isGreaterThan(hours);
  }

  /** Time in which a grain falls 3 m in liquor at rest [s]. */
  private static double fallTimeS(double grainM, double solids) {
    Carrier liquor = Carriers.manure(solids, si(Measure.TEMPERATURE, 15, "degC"));
    double falls =
        ShearSettling.atRest(
                new Grain(grainM, 2650, GrainShape.NATURAL),
                liquor.rheology(),
                liquor.densityKgM3(),
                SettlingVelocities.DEFAULT)
            .value();
    return 3 / falls;
  }

  /**
   * Common practice, no source: a cubic foot of loose sand weighs 100 lb, and a lane is cleaned
   * when it keeps less than half of its sand. Tolerance: 1 %, for a rounded weight.
   */
  @Test
  void aCubicFootOfLooseSandWeighsAHundredPounds() {
    ours((1 - SettlingLane.USUAL_POROSITY) * 2650)
        .isCloseTo(si(Measure.DENSITY, 100, "lb/ft3"), withinPercentage(1));
    ours(LaneFilling.LEAST_KEPT).isCloseTo(0.5, withinPercentage(1e-9));
  }
}
