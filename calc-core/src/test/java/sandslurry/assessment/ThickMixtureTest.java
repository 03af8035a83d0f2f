package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;

/** Designs that are valid field by field but whose sand does not flow or stalls the pump. */
class ThickMixtureTest {
  private static final String RATE = "/mixture/sandRate";

  private static Assessment assess(DesignDocument document) {
    Assessment assessment = Evaluation.assess(document.read().design().orElseThrow());
    // The report is asked for as well: no exception may reach a person there either.
    assertThat(new TextView(100).write(DesignReport.everything(assessment))).isNotEmpty();
    return assessment;
  }

  private static DesignDocument lineWithRate(String rate) {
    return Documents.line().without("/mixture").with(RATE, rate);
  }

  @Test
  void moreSandThanFlowsAtAnyFlowIsAFailWithTheFlowThatCures() {
    Assessment assessment = assess(lineWithRate("200 kg/s"));
    assertThat(assessment.verdict()).isEqualTo(Severity.FAIL);
    assertThat(assessment.line().orElseThrow().states()).isEmpty();
    assertThat(assessment.findings().get(0).cure()).startsWith("Keep the flow above ");
  }

  @Test
  void aMixtureTooThickByMassIsCuredByLiquidAndNotByFlow() {
    Assessment assessment =
        assess(
            Documents.line()
                .without("/mixture")
                .with("/mixture/massFraction", "64 %")
                .with("/sand/density", "1600 kg/m3"));
    assertThat(assessment.verdict()).isEqualTo(Severity.FAIL);
    assertThat(assessment.findings().get(0).cure()).startsWith("Add liquid until the sand is 40.0");
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
                .with("/mixture/volumeFraction", "40 %")
                .without("/sand/gradation")
                .with("/sand/d50", "20 mm")
                .with("/sand/d85", "25 mm")
                .with("/sand/density", "5000 kg/m3")
                .with("/pump/impeller", "2 in"));
    assertThat(assessment.pump().orElseThrow().duties()).isEmpty();
    assertThat(assessment.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.topic()).isEqualTo(Topic.PUMP);
              assertThat(finding.severity()).isEqualTo(Severity.FAIL);
              assertThat(finding.what()).contains("takes all of the head");
            });
  }
}
