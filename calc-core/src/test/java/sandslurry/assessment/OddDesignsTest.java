package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;

/** Designs that are odd but possible: what the report says of them must be true. */
class OddDesignsTest {
  private static DesignDocument line() {
    return Documents.parse(
        """
        {
          "formatVersion": 2,
          "sand": { "gradation": "ASTM C144" },
          "carrier": { "kind": "water", "temperature": "10 degC" },
          "lines": [
            {
              "mixture": { "volumeFraction": "3 %" },
              "flow": { "minimum": "22 L/s", "design": "24 L/s", "maximum": "26 L/s" },
              "route": {
                "sourceLevel": "1 m",
                "runs": [
                  {
                    "name": "run", "bore": "100 mm", "roughness": "0.05 mm", "rating": "10 bar",
                    "length": "60 m", "rise": "0 m"
                  }
                ]
              }
            }
          ]
        }
        """);
  }

  private static List<Finding> findings(DesignDocument document) {
    assertThat(document.read().problems()).isEmpty();
    return Evaluation.assess(document.read().design().orElseThrow()).findings();
  }

  private static Finding one(List<Finding> findings, String part) {
    return findings.stream()
        .filter(f -> f.what().contains(part) || f.id().equals(part))
        .reduce(
            (a, b) -> {
              throw new AssertionError("twice: " + part);
            })
        .orElseThrow(() -> new AssertionError(part + " is not among " + findings));
  }

  /** A pipe in which the sand stays in motion but wears the wall is no cure. */
  @Test
  void noSmallerPipeIsAdvisedInWhichTheFlowIsTooFastForWear() {
    DesignDocument wide =
        line()
            .without("/lines/0/route/runs/0/bore")
            .without("/lines/0/route/runs/0/rating")
            .with("/lines/0/route/runs/0/pipe/system", "ASTM D1785")
            .with("/lines/0/route/runs/0/pipe/size", "6 in")
            .with("/lines/0/route/runs/0/pipe/class", "Sch 40");
    assertThat(one(findings(wide), "line.below-limit").cures()).contains("fit-smaller");
    assertThat(
            one(findings(wide.with("/criteria/wearVelocity", "2.5 m/s")), "line.below-limit")
                .cures())
        .contains("no-smaller")
        .doesNotContain("fit-smaller");
  }

  @Test
  void stonesAsWideAsThePipeFailAndThoseOfAThirdOfItAreACaution() {
    DesignDocument stones =
        line().without("/sand/gradation").with("/sand/d50", "0.6 mm").with("/sand/d85", "6 mm");
    Finding blocks =
        one(findings(stones.with("/lines/0/route/runs/0/bore", "60 mm")), "line.grains-too-large");
    assertThat(blocks.severity()).isEqualTo(Severity.FAIL);
    assertThat(blocks.topic()).isEqualTo(Topic.PLUGGING);
    Finding locks =
        one(findings(stones.with("/lines/0/route/runs/0/bore", "200 mm")), "line.grains-lock");
    assertThat(locks.severity()).isEqualTo(Severity.CAUTION);
    assertThat(findings(line())).noneMatch(f -> f.id().startsWith("line.grains-"));
  }

  @Test
  void aLineThatFallsMoreThanItLosesIsToldThatGravityDrivesIt() {
    Finding gravity =
        one(
            findings(line().with("/lines/0/route/runs/0/rise", "-9 m")),
            "line.gravity-drives-more");
    assertThat(gravity.severity()).isEqualTo(Severity.CAUTION);
    assertThat(findings(line().with("/lines/0/route/runs/0/rise", "-2 m")))
        .noneMatch(f -> f.id().equals("line.gravity-drives-more"));
  }

  @Test
  void aPumpOnALineThatFallsIsNotToBeReplacedByOneOfNegativeHead() {
    DesignDocument falling = Documents.line().with("/lines/0/route/runs/0/rise", "-60 ft");
    Finding none = one(findings(falling), "There is no duty point");
    assertThat(none.cure())
        .startsWith("Gravity alone gives a higher flow rate")
        .doesNotContain("gives that head");
  }

  @Test
  void whereAirIsDrawnInTheReportSaysThatTheRunBelowFlowsPartFull() {
    assertThat(
            one(findings(line().with("/lines/0/route/runs/0/rise", "-9 m")), "line.vacuum").why())
        .contains("part full");
  }

  @Test
  void outsideEveryRangeTheVerdictStillFollowsTheVelocityAndSaysSo() {
    DesignDocument fine =
        line()
            .without("/sand/gradation")
            .with("/sand/d50", "0.09 mm")
            .with("/sand/d85", "0.12 mm")
            .with("/lines/0/flow/minimum", "6 L/s");
    Finding finding = one(findings(fine), "line.below-limit");
    assertThat(finding.severity()).isEqualTo(Severity.FAIL);
    assertThat(finding.reasons()).contains("limit", "outside");
    assertThat(finding.values()).containsKeys("limit", "required");
    assertThat(one(findings(fine.with("/lines/0/flow/minimum", "14 L/s")), "line.clear").severity())
        .isEqualTo(Severity.PASS);
    assertThat(
            one(findings(line().with("/lines/0/flow/minimum", "12 L/s")), "line.below-limit")
                .severity())
        .isEqualTo(Severity.FAIL);
  }

  @Test
  void aSteepSuctionThatIsFastEnoughIsNotToldToTakeAWiderPipe() {
    DesignDocument steep =
        Documents.line()
            .with("/lines/0/suction/altitude", "0 m")
            .with("/lines/0/suction/bore", "4 in")
            .with("/lines/0/suction/roughness", "0.05 mm")
            .with("/lines/0/suction/length", "8 m")
            .with("/lines/0/suction/rise", "6 m");
    Finding suction =
        findings(steep).stream()
            .filter(f -> f.topic() == Topic.PLUGGING && f.element().equals("suction"))
            .findFirst()
            .orElseThrow();
    assertThat(suction.severity()).isEqualTo(Severity.PASS);
    assertThat(suction.cure()).doesNotContain("bore");
  }

  private static DesignDocument yielding(String pascals) {
    return line()
        .without("/carrier")
        .with("/carrier/kind", "rheology")
        .with("/carrier/law", "Bingham")
        .with("/carrier/temperature", "10 degC")
        .with("/carrier/density", "1030 kg/m3")
        .with("/carrier/yieldStress", pascals)
        .with("/carrier/plasticViscosity", "15 cP");
  }

  @Test
  void aStoppedLineHoldsItsSandByNoLessAYieldStressThanARunningOne() {
    // 3 Pa holds d85 by theory but not surely the coarsest grain, which takes 11.5 Pa.
    Finding unsure = one(findings(yielding("3 Pa")), "Stopped full");
    assertThat(unsure.id()).isEqualTo("stop.lays-bed");
    assertThat(one(findings(yielding("200 Pa")), "Stopped full").id()).isEqualTo("stop.keeps-bed");
  }

  private static double seconds(Finding finding, String name) {
    return ((Value.Number) finding.values().get(name)).si();
  }

  @Test
  void aStopIsAsLongAsTheCoarseSandAndNotAsTheFinestAllows() {
    DesignDocument thick =
        line()
            .without("/carrier")
            .with("/carrier/kind", "measured")
            .with("/carrier/temperature", "10 degC")
            .with("/carrier/density", "1020 kg/m3")
            .with("/carrier/viscosity", "1500 cP");
    Finding stop = one(findings(thick), "Stopped full");
    // So thick that it flows laminar: sand lies on its floor before it stops.
    assertThat(stop.cures()).containsExactly("flush-every");
    // 8.65 h, and its coarse sand much sooner.
    assertThat(seconds(stop, "finest")).isBetween(31_100.0, 31_200.0);
    assertThat(seconds(stop, "coarse")).isLessThan(150);
    assertThat(one(findings(line()), "Stopped full").cures()).containsExactly("flush-every");
  }

  @Test
  void aThreadOfAPipeThatIsFastEnoughPassesInEveryState() {
    DesignDocument thread =
        line()
            .with("/lines/0/route/runs/0/bore", "40 mm")
            .with("/lines/0/flow/minimum", "4.5 L/s")
            .with("/lines/0/flow/design", "4.6 L/s")
            .with("/lines/0/flow/maximum", "4.7 L/s")
            .with("/lines/0/states/flushWater", "yes");
    ServiceResult service = Evaluation.assess(thread.read().design().orElseThrow()).service();
    assertThat(service.states())
        .flatExtracting(StateResult::reasons)
        .noneMatch(reason -> reason.contains("short of its margin"));
  }
}
