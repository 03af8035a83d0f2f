package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sandslurry.assessment.line.RunState;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.units.Kind;

/** Designs that are valid field by field but whose sand does not flow or stalls the pump. */
class ThickMixtureTest {
  private static final String RATE = "/lines/0/mixture/sandRate";

  private static Assessment assess(DesignDocument document) {
    Assessment assessment = Evaluation.assess(document.read().design().orElseThrow());
    // The report is asked for as well: no exception may reach a person there either.
    assertThat(new TextView(100).write(DesignReport.everything(assessment))).isNotEmpty();
    return assessment;
  }

  private static DesignDocument lineWithRate(String rate) {
    return Documents.line().without("/lines/0/mixture").with(RATE, rate);
  }

  @Test
  void moreSandThanFlowsAtAnyFlowIsAFailWithTheFlowThatCures() {
    Assessment assessment = assess(lineWithRate("200 kg/s"));
    assertThat(assessment.verdict()).isEqualTo(Severity.FAIL);
    assertThat(assessment.line().orElseThrow().states()).isEmpty();
    assertThat(assessment.findings().get(0).id()).isEqualTo("line.too-thick");
    assertThat(assessment.findings().get(0).cures()).containsExactly("keep-flow");
  }

  @Test
  void aMixtureTooThickByMassIsCuredByLiquidAndNotByFlow() {
    Assessment assessment =
        assess(
            Documents.line()
                .without("/lines/0/mixture")
                .with("/lines/0/mixture/massFraction", "64 %")
                .with("/sand/density", "1600 kg/m3"));
    assertThat(assessment.verdict()).isEqualTo(Severity.FAIL);
    assertThat(assessment.findings().get(0).id()).isEqualTo("line.too-thick");
    assertThat(assessment.findings().get(0).cures()).containsExactly("add-liquid");
    assertThat(assessment.findings().get(0).values().get("thickest"))
        .isEqualTo(new Value.Number(Kind.PERCENT, 0.4));
  }

  @Test
  void aLaneThatTakesAMixtureTooThickToFlowFails() {
    Assessment assessment =
        assess(
            lineWithRate("200 kg/s")
                .with("/lane/length", "60 m")
                .with("/lane/width", "3.6 m")
                .with("/lane/slope", "0.25 %")
                .with("/lane/flow", "100 L/s")
                .with("/lane/sandStorageDepth", "0.3 m"));
    assertThat(assessment.lane()).isEmpty();
    assertThat(assessment.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.topic()).isEqualTo(Topic.LANE);
              assertThat(finding.severity()).isEqualTo(Severity.FAIL);
              assertThat(finding.what()).contains("too thick");
            });
  }

  @Test
  void aPumpThatTheSandStallsHasNoDutyPoint() {
    Assessment assessment =
        assess(
            Documents.line()
                .with("/lines/0/mixture/volumeFraction", "40 %")
                .without("/sand/gradation")
                .with("/sand/d50", "20 mm")
                .with("/sand/d85", "25 mm")
                .with("/sand/density", "5000 kg/m3")
                .with("/lines/0/pump/impeller", "2 in"));
    assertThat(assessment.pump().orElseThrow().duties()).isEmpty();
    assertThat(assessment.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.topic()).isEqualTo(Topic.PUMP);
              assertThat(finding.severity()).isEqualTo(Severity.FAIL);
              assertThat(finding.what()).contains("takes all of the head");
            });
  }

  /** Thick manure with much sand through 20 m of 150 mm, at 0.5 m/s. */
  private static DesignDocument scraped(String more) {
    return Documents.parse(
        """
        {
          "formatVersion": 1,
          "sand": { "d50": "0.4 mm", "d85": "0.8 mm" },
          "carrier": { "kind": "rheology", "law": "Herschel-Bulkley", "temperature": "10 degC",
            "density": "1040 kg/m3", "yieldStress": "40 Pa", "consistency": "30",
            "index": "0.4" },
          "mixture": { "volumeFraction": "15 %%" },
          "flow": { "minimum": "9 L/s", "design": "9 L/s", "maximum": "9 L/s" },
          "route": { "runs": [ { "name": "Line", "bore": "150 mm", "roughness": "0.02 mm",
            "rating": "4 MPa", "length": "20 m" } ] },
          "pump": { "kind": "piston", "displacement": "30 L", "strokeRate": "20 1/min",
            "volumetricEfficiency": "90 %%", "pressureLimit": "165 kPa" }
          %s
        }
        """
            .formatted(more));
  }

  @Test
  void thickManureWithMuchSandMovesAsASlidingBedThatThePumpMustBeAbleToRestart() {
    Assessment runs = assess(scraped(""));
    RunState run = runs.line().orElseThrow().states().get(0).runs().get(0);
    SandCarriage carriage = run.carriage().orElseThrow();
    assertThat(carriage.support()).isEqualTo(SandCarriage.Support.SLIDING_BED);
    assertThat(carriage.floorShare()).isGreaterThan(4 * carriage.toleratedShare());
    // Far less than the 28 to 35 kPa/m that would keep all of the sand off the floor.
    assertThat(run.flow().gradient() * 1020 * 9.81).isBetween(2e3, 8e3);
    assertThat(carriage.slideDemand()).isLessThan(1);
    assertThat(runs.verdict()).isEqualTo(Severity.CAUTION);
    // The same line, whose liquor stiffens eightfold: 4 × 320 Pa × 20 m/0.15 m = 171 kPa.
    Assessment stuck = assess(scraped(", \"operation\": { \"thixotropy\": \"8\" }"));
    assertThat(stuck.service().stop().orElseThrow().restart().yieldPa()).isBetween(170e3, 190e3);
    assertThat(stuck.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.id()).isEqualTo("stop.restart-bed-stuck");
              assertThat(finding.severity()).isEqualTo(Severity.FAIL);
            });
    assertThat(stuck.verdict()).isEqualTo(Severity.FAIL);
  }
}
