package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.golden.Shipped.assess;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.LongStream;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpResult;
import sandslurry.design.Design;
import sandslurry.design.Documents;
import sandslurry.design.RandomDesigns;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.station.PumpSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;
import sandslurry.fact.step.Step;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.separation.lane.LaneClass;
import sandslurry.separation.lane.LaneCycle;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;
import sandslurry.transport.deposition.DepositionVelocities.Role;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Measure;

/** What must hold of every assessment, tried on designs made at random. */
class AssessmentProperties {
  private static final String RUN = "/lines/0/route/runs/0";

  /** The first design of this seed or of the next ones that can be read. */
  private static Design extreme(long seed) {
    return LongStream.iterate(seed, next -> next + 1)
        .mapToObj(one -> Documents.parse(RandomDesigns.extreme(one)).read().design())
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow();
  }

  private static DesignDocument plausible(long seed) {
    return Documents.parse(RandomDesigns.plausibleLine(seed));
  }

  private static DesignDocument atFlow(DesignDocument document, double flowM3ps) {
    return document
        .without("/lines/0/flow/minimum")
        .without("/lines/0/flow/maximum")
        .with("/lines/0/flow/design", flowM3ps + " m3/s");
  }

  private static double flow(Assessment assessment, FlowCase flowCase) {
    return assessment.line().orElseThrow().at(flowCase).orElseThrow().flowM3ps();
  }

  private static double si(DesignDocument document, String field) {
    return Measure.LENGTH.si(Measure.LENGTH.parse(document.text(field)));
  }

  private static RunState first(Assessment assessment, FlowCase flowCase) {
    return assessment.line().orElseThrow().at(flowCase).orElseThrow().runs().get(0);
  }

  private static DepositionJudgement judged(Assessment assessment) {
    return first(assessment, FlowCase.DESIGN).deposition().orElseThrow();
  }

  @Property(tries = 40, maxDiscardRatio = 50)
  void theSameDesignTypedInOtherUnitsHasTheSameNumbers(@ForAll long seed) {
    Optional<Design> metric = Documents.parse(RandomDesigns.inside(seed, false)).read().design();
    Optional<Design> us = Documents.parse(RandomDesigns.inside(seed, true)).read().design();
    assertThat(us.isPresent()).isEqualTo(metric.isPresent());
    Assume.that(metric.isPresent());
    Assessment one = Evaluation.assess(metric.get());
    Assessment other = Evaluation.assess(us.get());
    assertThat(other.working()).hasSameSizeAs(one.working());
    for (int i = 0; i < one.working().size(); i++) {
      Step expected = one.working().get(i);
      Step found = other.working().get(i);
      assertThat(found.symbol()).isEqualTo(expected.symbol());
      assertThat(found.value())
          .as("%s of %s", expected.symbol(), expected.element())
          .isCloseTo(expected.value(), within(1e-9 * Math.max(Math.abs(expected.value()), 1e-3)));
    }
    assertThat(other.findings())
        .extracting(Finding::severity, Finding::topic, Finding::element, Finding::what)
        .hasSameSizeAs(one.findings());
    assertThat(other.verdict()).isEqualTo(one.verdict());
    assertThat(other.line().isPresent()).isEqualTo(one.line().isPresent());
    one.line().ifPresent(line -> sameWindow(line.window(), other.line().orElseThrow().window()));
  }

  private static void sameWindow(OperatingWindow one, OperatingWindow other) {
    assertThat(other.intervals()).hasSameSizeAs(one.intervals());
    for (int i = 0; i < one.intervals().size(); i++) {
      OperatingWindow.Interval a = one.intervals().get(i);
      OperatingWindow.Interval b = other.intervals().get(i);
      assertThat(b.low().flowM3ps())
          .isCloseTo(a.low().flowM3ps(), within(1e-6 * a.low().flowM3ps()));
      assertThat(b.low().cause()).isEqualTo(a.low().cause());
      assertThat(b.high().isPresent()).isEqualTo(a.high().isPresent());
      a.high()
          .ifPresent(
              high ->
                  assertThat(b.highM3ps())
                      .isCloseTo(high.flowM3ps(), within(1e-6 * high.flowM3ps())));
    }
  }

  @Property(tries = 40, maxDiscardRatio = 50)
  void aLineWithoutSandIsALineOfClearLiquid(@ForAll long seed) {
    DesignDocument document = Documents.parse(RandomDesigns.extreme(seed));
    Assume.that(document.has("/lines/0/route") && document.read().design().isPresent());
    Assessment assessment =
        assess(
            document
                .without("/lines/0/pump")
                .without("/lines/0/suction")
                .without("/lines/0/states/wornHead")
                .without("/lane")
                .without("/lines/0/mixture")
                .with("/lines/0/mixture/volumeFraction", "0 %"));
    for (LineState state : assessment.line().orElseThrow().states()) {
      for (RunState run : state.runs()) {
        assertThat(run.deposition()).isEmpty();
        assertThat(run.severity()).isEqualTo(Severity.PASS);
        double liquid = run.flow().gradient();
        assertThat(run.friction().slurryGradient()).isEqualTo(liquid);
        assertThat(run.headLossModels())
            .allSatisfy(model -> assertThat(model.estimate().value()).isEqualTo(liquid));
      }
    }
    assertThat(assessment.findings())
        .filteredOn(finding -> finding.topic() == Topic.PLUGGING)
        // The carrier may be close to freezing, with or without sand.
        .filteredOn(finding -> !finding.element().equals("carrier"))
        .isNotEmpty()
        .allMatch(finding -> finding.severity() == Severity.PASS);
  }

  @Property(tries = 50, maxDiscardRatio = 50)
  void aDutyPointLiesOnBothCurves(@ForAll long seed) {
    // The next seeds are tried until one has such a pump: few tries would all be discarded now and
    // then.
    Assessment assessment =
        LongStream.iterate(seed, next -> next + 1)
            .mapToObj(AssessmentProperties::extreme)
            .filter(one -> one.pump().flatMap(PumpSpec::rotodynamic).isPresent())
            .map(Evaluation::assess)
            .filter(one -> one.pump().isPresent())
            .findFirst()
            .orElseThrow();
    Design design = assessment.design();
    PumpResult result = assessment.pump().get();
    Materials materials = Materials.of(design);
    LineModel line = new LineModel(materials);
    double fraction = materials.sandFraction(design.oneLine().flow().designM3ps());
    for (PumpResult.Duty duty : result.duties()) {
      if (duty.meeting() == Meeting.JUMP) {
        // No head is shared there: the finding says that the flow hunts.
        continue;
      }
      PumpGroup pumps =
          new PumpEvaluation(line)
              .derated(design.pump().get().rotodynamic().orElseThrow())
              .orElseThrow();
      double flow = duty.flowM3ps();
      double head = duty.headM();
      assertThat(pumps.headM(flow)).isCloseTo(head, within(1e-9 * Math.max(1, Math.abs(head))));
      assertThat(line.systemHeadM(flow, fraction))
          .isCloseTo(head, within(1e-9 * Math.max(1, Math.abs(head))));
    }
  }

  @Property(tries = 80, maxDiscardRatio = 50)
  void theVerdictIsTheWorstOfTheFindingsAndTheyComeInThatOrder(@ForAll long seed) {
    Assessment assessment = Evaluation.assess(extreme(seed));
    List<Severity> severities = assessment.findings().stream().map(Finding::severity).toList();
    assertThat(severities).isSortedAccordingTo((a, b) -> b.compareTo(a));
    Severity worst =
        severities.stream().filter(s -> s != Severity.NOTE).findFirst().orElse(Severity.PASS);
    assertThat(assessment.verdict()).isEqualTo(worst);
  }

  /** Correlations whose range holds the concentrations at which they are asked. */
  private static final Set<String> KNOW_THE_CONCENTRATION =
      Set.of("oroskar-turian-1980-regression", "thomas-1979");

  /** Looks for a design that passes and should not, by the definitions and not by the rule. */
  private static void searchForAFalsePass(Assessment assessment) {
    boolean mustNotPass = false;
    for (LineState state : assessment.line().orElseThrow().states()) {
      for (RunState run : state.runs()) {
        if (run.deposition().isEmpty()) {
          continue;
        }
        DepositionJudgement judged = run.deposition().get();
        // Towards the vertical no bed can lie, and the velocity for a level pipe says nothing.
        boolean steep = judged.limitMps() < judged.limiting().valueMps();
        boolean settles =
            run.depositionModels().stream()
                .filter(e -> KNOW_THE_CONCENTRATION.contains(e.model().id()))
                .filter(e -> e.role() == Role.GOVERNING || e.role() == Role.FLOOR)
                .filter(e -> !steep && e.estimate().inRange())
                .anyMatch(e -> run.leastVelocityMps() < e.valueMps());
        boolean turbulent = run.regime() == Regime.TURBULENT;
        boolean heldByYield =
            run.regime() == Regime.LAMINAR
                && run.carriage().orElseThrow().support() == Support.CARRIED_BY_YIELD_STRESS;
        if (turbulent ? settles : !heldByYield) {
          assertThat(run.severity()).isGreaterThan(Severity.PASS);
          mustNotPass = true;
        }
      }
    }
    if (mustNotPass) {
      assertThat(assessment.verdict()).isGreaterThan(Severity.PASS);
    }
  }

  @Property(tries = 120, maxDiscardRatio = 50)
  void noLineThatIsBuiltPassesBelowAPublishedVelocityOrWithoutTurbulence(@ForAll long seed) {
    searchForAFalsePass(assess(plausible(seed)));
  }

  @Property(tries = 80, maxDiscardRatio = 50)
  void noLineAtAllPassesBelowAPublishedVelocityOrWithoutTurbulence(@ForAll long seed) {
    Design design = extreme(seed);
    Assume.that(design.line().isPresent());
    searchForAFalsePass(Evaluation.assess(design));
  }

  /** A curve that ended a rounding below no head in a thick liquor once ended in an exception. */
  @Example
  void aPumpCurveThatEndsAtNoHeadIsJudgedInAThickLiquor() {
    noLineAtAllPassesBelowAPublishedVelocityOrWithoutTurbulence(-377);
  }

  @Property(tries = 40, maxDiscardRatio = 50)
  void atTheFlowThatCuresNothingSettles(
      @ForAll long seed, @ForAll @DoubleRange(min = 1, max = 3) double more) {
    DesignDocument document = plausible(seed);
    OptionalDouble cure = assess(document).line().orElseThrow().window().carriesFromM3ps();
    Assume.that(cure.isPresent());
    double flow = cure.getAsDouble() * (1 + 1e-8);
    RunState run = first(assess(atFlow(document, flow)), FlowCase.DESIGN);
    Outcome outcome = run.deposition().orElseThrow().outcome();
    assertThat(run.regime()).isEqualTo(Regime.TURBULENT);
    assertThat(outcome).isEqualTo(Outcome.CLEAR);
    RunState faster = first(assess(atFlow(document, flow * more)), FlowCase.DESIGN);
    assertThat(faster.deposition().orElseThrow().outcome()).isEqualTo(Outcome.CLEAR);
  }

  @Property(tries = 40, maxDiscardRatio = 50)
  void theSmallerPipeThatACureNamesPasses(@ForAll long seed) {
    DesignDocument document = plausible(seed);
    Assessment assessment = assess(document);
    Finding finding =
        assessment.findings().stream()
            .filter(f -> f.topic() == Topic.PLUGGING && f.cures().contains("fit-smaller"))
            .findFirst()
            .orElse(null);
    Assume.that(finding != null);
    StandardPipe now = assessment.design().oneLine().route().runs().get(0).pipe().orElseThrow();
    StandardPipe smaller =
        PipeCatalogue.sameSystemAndClass(now).stream()
            .filter(pipe -> finding.values().get("smaller").equals(new Value.Name(pipe.words())))
            .findFirst()
            .orElseThrow();
    assertThat(smaller.largestBoreM()).isLessThan(now.largestBoreM());
    FlowCase worst =
        finding.values().get("case").equals(new Value.Name(FlowCase.MINIMUM.words()))
            ? FlowCase.MINIMUM
            : FlowCase.DESIGN;
    Assessment cured =
        assess(atFlow(document.with(RUN + "/pipe/size", smaller.size()), flow(assessment, worst)));
    assertThat(first(cured, FlowCase.DESIGN).severity()).isEqualTo(Severity.PASS);
  }

  @Property(tries = 40, maxDiscardRatio = 50)
  void denserSandAsksForMoreVelocity(
      @ForAll long seed, @ForAll @DoubleRange(min = 1.01, max = 1.3) double factor) {
    DesignDocument document = plausible(seed);
    DepositionJudgement before = judged(assess(document));
    DepositionJudgement after =
        judged(assess(document.with("/sand/density", 2650 * factor + " kg/m3")));
    // Where other correlations come into or go out of their range the limit may jump.
    Assume.that(before.limiting().model().equals(after.limiting().model()));
    Assume.that(before.limiting().sizeM() == after.limiting().sizeM());
    assertThat(after.limitMps()).isGreaterThan(before.limitMps());
  }

  @Property(tries = 30, maxDiscardRatio = 50)
  void frictionGrowsInProportionToLength(
      @ForAll long seed, @ForAll @DoubleRange(min = 1.1, max = 10) double factor) {
    DesignDocument document = plausible(seed);
    Assessment once = assess(document);
    // At the same slope, so that nothing but the length changes.
    Assessment more =
        assess(
            document
                .with(RUN + "/length", factor * si(document, RUN + "/length") + " m")
                .with(RUN + "/rise", factor * si(document, RUN + "/rise") + " m"));
    RunState run = first(once, FlowCase.DESIGN);
    double friction = run.friction().pa();
    double longer = first(more, FlowCase.DESIGN).friction().pa();
    assertThat(friction).isPositive();
    assertThat(longer).isGreaterThan(factor * friction * (1 - 1e-9));
    // Where eddies do not lift the sand, more of it reaches the floor of a longer pipe.
    if (run.regime() == Regime.TURBULENT) {
      assertThat(longer).isCloseTo(factor * friction, within(1e-9 * factor * friction));
    }
  }

  @Property(tries = 30, maxDiscardRatio = 50)
  void aSmallerBoreMakesMoreVelocityAndMoreFriction(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.5, max = 0.95) double factor) {
    DesignDocument document =
        plausible(seed).without(RUN + "/pipe").with(RUN + "/roughness", "0.05 mm");
    RunState wide = first(assess(document.with(RUN + "/bore", "150 mm")), FlowCase.DESIGN);
    RunState narrow =
        first(assess(document.with(RUN + "/bore", 150 * factor + " mm")), FlowCase.DESIGN);
    double before = wide.velocityMps();
    assertThat(narrow.velocityMps()).isCloseTo(before / (factor * factor), within(1e-9 * before));
    assertThat(narrow.flow().gradient()).isGreaterThan(wide.flow().gradient());
  }

  @Property(tries = 50, maxDiscardRatio = 50)
  void aLowerMinimumFlowNeverMendsAPluggingLine(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.2, max = 1) double factor) {
    DesignDocument document = plausible(seed);
    Assessment before = assess(document);
    Assessment after =
        assess(
            document.with(
                "/lines/0/flow/minimum", factor * flow(before, FlowCase.MINIMUM) + " m3/s"));
    if (worstPlugging(before) != Severity.FAIL || before.design().carrier().isWater()) {
      assertThat(worstPlugging(after)).isGreaterThanOrEqualTo(worstPlugging(before));
    } else {
      // Of thinning manure that flows laminar the correlations cannot even say that it fails.
      assertThat(worstPlugging(after)).isGreaterThan(Severity.PASS);
    }
  }

  private static Severity worstPlugging(Assessment assessment) {
    return assessment.findings().stream()
        .filter(finding -> finding.topic() == Topic.PLUGGING)
        .map(Finding::severity)
        .reduce(Severity.NOTE, Severity::or);
  }

  @Property(tries = 50, maxDiscardRatio = 50)
  void theSandOfTheClassesSumsToAllSandAndNoMoreIsKeptThanCame(@ForAll long seed) {
    Design design = extreme(seed);
    Assume.that(design.lane().isPresent());
    Evaluation.assess(design)
        .lane()
        .ifPresent(
            lane -> {
              double sum = lane.classes().stream().mapToDouble(LaneClass::share).sum();
              LaneCycle cycle = lane.cycle();
              // A lane to which clear liquid runs has no sand to share out.
              boolean fed = lane.sandKgPs() > 0;
              assertThat(sum).isCloseTo(fed ? 1 : 0, within(1e-9));
              for (LaneFilling filling :
                  List.of(cycle.cautious(), cycle.likely(), cycle.hopeful())) {
                for (int k = 0; k < filling.fedKg().size(); k++) {
                  assertThat(filling.depositedKg().get(k))
                      .isBetween(0.0, filling.fedKg().get(k) * (1 + 1e-9));
                }
              }
              assertThat(cycle.cautious().points().get(0).recovery())
                  .isLessThanOrEqualTo(cycle.likely().points().get(0).recovery() + 1e-9);
              assertThat(cycle.likely().points().get(0).recovery())
                  .isLessThanOrEqualTo(cycle.hopeful().points().get(0).recovery() + 1e-9);
            });
  }
}
