package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.correlation.Estimate;
import sandslurry.design.Design;
import sandslurry.design.Documents;
import sandslurry.design.RandomDesigns;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Reading;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.material.Slurry;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.deposition.DepositionVelocityModel;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Measure;

/**
 * A hunt for designs that pass and would plug, over lines with the odd turns that real ones take.
 * What must hold is worked out from the correlations themselves and not from the rule under test.
 */
class FalsePassProperties {
  private static final Set<String> IN_ANY_LIQUID =
      Set.of("oroskar-turian-1980-regression", "thomas-1979");
  private static final Set<String> IN_WATER = Set.of("wasp-1977", "durand-1953");
  private static final double WATER_LIKE_M2PS = 2e-6;
  private static final double STEEP_RAD = Math.toRadians(60);

  private static DesignDocument odd(long seed) {
    return Documents.parse(RandomDesigns.oddLine(seed, false));
  }

  private static Design design(DesignDocument document) {
    Reading reading = document.read();
    assertThat(reading.problems()).isEmpty();
    return reading.design().orElseThrow();
  }

  private static Assessment assess(DesignDocument document) {
    return Evaluation.assess(design(document));
  }

  /** How the runs stand as far as sand goes, by their names. */
  private static Map<String, Severity> plugging(Assessment assessment) {
    Map<String, Severity> byRun = new TreeMap<>();
    Set<String> runs =
        assessment.design().oneLine().route().runs().stream()
            .map(run -> run.name())
            .collect(Collectors.toSet());
    for (Finding finding : assessment.findings()) {
      // The operating window is not a run: it may well open with a wider pipe.
      if (finding.topic() == Topic.PLUGGING && runs.contains(finding.element())) {
        byRun.merge(finding.element(), finding.severity(), Severity::or);
      }
    }
    return byRun;
  }

  @Property(tries = 80)
  void aRunThatPassesIsFastEnoughForTheCoarsestSizeByEveryModelInItsRange(@ForAll long seed) {
    Design design = design(odd(seed));
    Assessment assessment = Evaluation.assess(design);
    Map<String, Severity> plugging = plugging(assessment);
    Materials materials = Materials.of(design);
    LineModel model = new LineModel(materials);
    for (LineState state : assessment.line().orElseThrow().states()) {
      double fraction = state.sandFraction();
      for (RunPoint run : model.runs(state.flowM3ps(), fraction)) {
        if (plugging.get(run.pipe().spec().name()) != Severity.PASS
            || run.slurry().volumeFraction() == 0) {
          continue;
        }
        if (run.regime() != Regime.TURBULENT) {
          assertThat(run.regime()).isEqualTo(Regime.LAMINAR);
          assertThat(run.carriage().orElseThrow().support())
              .isEqualTo(Support.CARRIED_BY_YIELD_STRESS);
          assertThat(run.mixture().rheology().yieldStressPa()).isPositive();
          continue;
        }
        if (Math.abs(run.pipe().angleRad()) < STEEP_RAD) {
          // Of a sand a half is coarser than d50 and a sixth coarser than d85.
          assertThat(wanted(run, run.slurry().d50M(), 1))
              .isLessThanOrEqualTo(run.leastVelocityMps());
          assertThat(wanted(run, run.slurry().d85M(), 0.15))
              .isLessThanOrEqualTo(run.leastVelocityMps());
        }
      }
    }
  }

  /**
   * The most that any correlation that knows the concentration and is in its range asks for sand of
   * one size at its own concentration.
   */
  private static double wanted(RunPoint run, double sizeM, double share) {
    Slurry slurry =
        run.slurry().ofUniformSize(sizeM).withVolumeFraction(share * run.slurry().volumeFraction());
    boolean water = slurry.liquid().kinematicViscosityM2ps() < WATER_LIKE_M2PS;
    double most = 0;
    for (DepositionVelocityModel model :
        DepositionVelocities.FAMILY.all().stream()
            .filter(m -> IN_ANY_LIQUID.contains(m.id()) || water && IN_WATER.contains(m.id()))
            .toList()) {
      Estimate estimate = model.velocityMps(slurry, run.pipe().largest());
      if (estimate.inRange()) {
        most = Math.max(most, estimate.value());
      }
    }
    return most;
  }

  @Property(tries = 12)
  void moreSandCoarserSandOrAWiderPipeMendsNoPlug(
      @ForAll long seed, @ForAll @DoubleRange(min = 1.05, max = 3) double factor) {
    DesignDocument document = odd(seed);
    Assessment before = assess(document);
    double fraction = number(document, "/lines/0/mixture/volumeFraction");
    double coarse = Measure.LENGTH.si(Measure.LENGTH.parse(document.text("/sand/d85")));
    DesignDocument wider = document;
    for (int i = 0; i < document.size("/lines/0/route/runs"); i++) {
      String bore = "/lines/0/route/runs/" + i + "/bore";
      wider =
          wider.with(
              bore,
              Math.min(1.2, factor * Measure.LENGTH.si(Measure.LENGTH.parse(document.text(bore))))
                  + " m");
    }
    for (DesignDocument worse :
        List.of(
            document.with("/lines/0/mixture/volumeFraction", "" + Math.min(0.4, factor * fraction)),
            document.with("/sand/d85", Math.min(0.025, factor * coarse) + " m"),
            wider)) {
      Map<String, Severity> after = plugging(assess(worse));
      plugging(before)
          .forEach(
              (run, severity) -> {
                if (severity == Severity.FAIL) {
                  assertThat(after.get(run)).as(run).isGreaterThan(Severity.PASS);
                }
              });
    }
  }

  private static double number(DesignDocument document, String field) {
    return Measure.FRACTION.si(Measure.FRACTION.parse(document.text(field)));
  }

  @Property(tries = 20)
  void aLowerLeastFlowMendsNoPlug(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 1) double factor) {
    DesignDocument document = odd(seed);
    double least = Measure.FLOW.si(Measure.FLOW.parse(document.text("/lines/0/flow/minimum")));
    Map<String, Severity> after =
        plugging(
            assess(
                document.with(
                    "/lines/0/flow/minimum", Math.max(5.1e-5, factor * least) + " m3/s")));
    plugging(assess(document))
        .forEach(
            (run, severity) -> {
              if (severity == Severity.FAIL) {
                assertThat(after.get(run)).as(run).isGreaterThan(Severity.PASS);
              }
            });
  }

  @Property(tries = 25)
  void theSameLineTypedInUsUnitsIsJudgedTheSame(@ForAll long seed) {
    Assessment metric = assess(odd(seed));
    Assessment us = assess(Documents.parse(RandomDesigns.oddLine(seed, true)));
    assertThat(us.verdict()).isEqualTo(metric.verdict());
    assertThat(us.findings().stream().map(FalsePassProperties::saidWithoutUnits).toList())
        .containsExactlyElementsOf(
            metric.findings().stream().map(FalsePassProperties::saidWithoutUnits).toList());
    List<LineState> states = metric.line().orElseThrow().states();
    for (int s = 0; s < states.size(); s++) {
      for (int r = 0; r < states.get(s).runs().size(); r++) {
        RunState one = states.get(s).runs().get(r);
        RunState other = us.line().orElseThrow().states().get(s).runs().get(r);
        assertThat(other.severity()).isEqualTo(one.severity());
        same(
            one.deposition().orElseThrow().velocityToPassMps(),
            other.deposition().orElseThrow().velocityToPassMps());
        same(one.leastVelocityMps(), other.leastVelocityMps());
        same(one.friction().pa(), other.friction().pa());
      }
    }
  }

  /** A finding but for its numbers, which each design shows in its own units. */
  private static List<?> saidWithoutUnits(Finding finding) {
    return List.of(
        finding.id(),
        finding.severity(),
        finding.topic(),
        finding.element(),
        finding.reasons(),
        finding.cures());
  }

  private static void same(double one, double other) {
    assertThat(other).isCloseTo(one, within(1e-9 * Math.abs(one)));
  }

  @Property(tries = 15)
  void theGoverningStateIsTheWorstAndTheVerdictIsNoBetter(@ForAll long seed) {
    Assessment assessment = assess(odd(seed).with("/lines/0/states/flushWater", "yes"));
    ServiceResult service = assessment.service();
    Severity worst =
        service.states().stream().map(StateResult::severity).reduce(Severity.NOTE, Severity::or);
    assertThat(service.governing().orElseThrow().severity()).isEqualTo(worst);
    assertThat(assessment.verdict()).isGreaterThanOrEqualTo(worst);
    for (StateResult state : service.states()) {
      assertThat(state.reasons().isEmpty())
          .as(state.name() + " " + state.reasons())
          .isEqualTo(state.severity() == Severity.PASS);
    }
  }
}
