package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.assessment.line.DilutionCurve;
import sandslurry.assessment.line.DilutionEvaluation;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.Design;
import sandslurry.design.Documents;
import sandslurry.design.LineSpec;
import sandslurry.design.RandomDesigns;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.CarrierSpec.MeasuredSpec;
import sandslurry.design.material.CarrierSpec.RheologySpec;
import sandslurry.design.material.DilutionSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.friction.ClearLiquid.Regime;

/** What must hold of a line whose carrier is not water. */
class CarrierAssessmentProperties {
  private static Design with(Design d, CarrierSpec carrier) {
    return d.line().isPresent()
        ? with(d, carrier, d.oneLine().mixture(), Optional.empty())
        : d.with(carrier, List.of());
  }

  private static Design with(
      Design d, CarrierSpec carrier, MixtureSpec mixture, Optional<DilutionSpec> dilution) {
    LineSpec line = d.line().orElseThrow();
    return d.with(
        carrier,
        List.of(
            new LineSpec(
                line.name(),
                mixture,
                dilution,
                line.flow(),
                line.route(),
                line.pump(),
                line.service())));
  }

  private static Design plausible(long seed) {
    return Documents.parse(RandomDesigns.plausibleLine(seed)).read().design().orElseThrow();
  }

  private static CarrierSpec rheology(Rheology law, double solids) {
    return new RheologySpec(
        283.15, 1020, law, solids > 0 ? OptionalDouble.of(solids) : OptionalDouble.empty());
  }

  private static CarrierSpec newtonian(double viscosityPaS) {
    return new MeasuredSpec(283.15, 1020, viscosityPaS);
  }

  /** A line of one run in metric units. */
  private static Design line(
      String carrier,
      String sand,
      double volumePercent,
      double litres,
      double bore,
      double length,
      double rise,
      String more) {
    return Documents.parse(
            """
            {
              "formatVersion": 1,
              "sand": { %s },
              "carrier": { %s },
              "mixture": { "volumeFraction": "%s %%" },
              "flow": { "design": "%s L/s" },
              "route": { "runs": [ { "name": "Line", "bore": "%s mm", "roughness": "0.02 mm",
                "rating": "4 MPa", "length": "%s m", "rise": "%s m" } ] }
              %s
            }
            """
                .formatted(sand, carrier, volumePercent, litres, bore, length, rise, more))
        .read()
        .design()
        .orElseThrow();
  }

  private static final String THICK =
      "\"kind\": \"rheology\", \"law\": \"Herschel-Bulkley\", \"temperature\": \"5 degC\","
          + " \"density\": \"1040 kg/m3\", \"yieldStress\": \"40 Pa\", \"consistency\": \"36\","
          + " \"index\": \"0.35\", \"totalSolids\": \"12.5 %\"";
  private static final String FINE = "\"d50\": \"0.15 mm\", \"d85\": \"0.22 mm\"";

  private static List<Double> numbers(Assessment assessment) {
    List<Double> numbers = new ArrayList<>();
    LineResult line = assessment.line().orElseThrow();
    for (LineState state : line.states()) {
      numbers.add(state.systemHeadM());
      for (RunState run : state.runs()) {
        numbers.add(run.flow().reynolds());
        numbers.add(run.flow().wallShearRatePs());
        numbers.add(run.flow().gradient());
        numbers.add(run.friction().slurryGradient());
        run.headLossModels().forEach(m -> numbers.add(m.estimate().value()));
        numbers.add(run.friction().pa());
        numbers.add(run.friction().fittingsPa());
        numbers.add(run.pressures().startPa());
        run.deposition()
            .ifPresent(
                d -> {
                  numbers.add(d.limitMps());
                  numbers.add(d.requiredMps());
                  numbers.add(d.velocityToPassMps());
                });
        run.carriage()
            .ifPresent(
                c -> {
                  numbers.add(c.turbulentAboveMps());
                  numbers.add(c.floorShare());
                  numbers.add(c.outsidePlugShare());
                });
      }
    }
    for (LineResult.SystemPoint point : line.systemCurve()) {
      numbers.add(point.headM());
    }
    line.window().intervals().forEach(interval -> numbers.add(interval.low().flowM3ps()));
    assessment
        .pump()
        .ifPresent(
            p ->
                p.duties()
                    .forEach(
                        duty -> {
                          numbers.add(duty.flowM3ps());
                          numbers.add(duty.headM());
                        }));
    assessment
        .lane()
        .ifPresent(
            lane -> {
              numbers.add(lane.cycle().cautious().meanRecovery());
              numbers.add(lane.cycle().likely().meanRecovery());
            });
    return numbers;
  }

  private static void sameEverywhere(Assessment one, Assessment other, double relative) {
    assertThat(other.verdict()).isEqualTo(one.verdict());
    assertThat(other.findings())
        .extracting(Finding::severity, Finding::topic, Finding::element)
        .containsExactlyElementsOf(
            one.findings().stream()
                .map(
                    f ->
                        org.assertj.core.api.Assertions.tuple(f.severity(), f.topic(), f.element()))
                .toList());
    List<Double> expected = numbers(one);
    List<Double> found = numbers(other);
    assertThat(found).hasSameSizeAs(expected);
    for (int i = 0; i < expected.size(); i++) {
      assertThat(found.get(i))
          .as("number %s", i)
          .isCloseTo(expected.get(i), within(relative * Math.max(Math.abs(expected.get(i)), 1e-6)));
    }
  }

  @Property(tries = 60, maxDiscardRatio = 50)
  void withIndexOneAndNoYieldStressEveryNumberIsThatOfTheMeasuredViscosity(
      @ForAll long seed, @ForAll @Scale(6) @DoubleRange(min = 0.0008, max = 0.3) double viscosity) {
    Design design = plausible(seed);
    sameEverywhere(
        Evaluation.assess(with(design, newtonian(viscosity))),
        Evaluation.assess(with(design, rheology(new PowerLaw(viscosity, 1), 0))),
        1e-9);
  }

  @Property(tries = 40, maxDiscardRatio = 50)
  void aBinghamLiquidIsAHerschelBulkleyLiquidOfIndexOne(
      @ForAll long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 20) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.2) double viscosity) {
    Design design = plausible(seed);
    sameEverywhere(
        Evaluation.assess(with(design, rheology(new Bingham(yield, viscosity), 0))),
        Evaluation.assess(with(design, rheology(new HerschelBulkley(yield, viscosity, 1), 0))),
        1e-9);
  }

  @Property(tries = 30, maxDiscardRatio = 50)
  void aVanishingYieldStressIsNone(
      @ForAll long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 3) double k,
      @ForAll @Scale(6) @DoubleRange(min = 0.35, max = 0.95) double n) {
    Design design = plausible(seed);
    Assessment none = Evaluation.assess(with(design, rheology(new PowerLaw(k, n), 0)));
    Assessment trace =
        Evaluation.assess(with(design, rheology(new HerschelBulkley(1e-9, k, n), 0)));
    sameEverywhere(none, trace, 1e-5);
  }

  @Property(tries = 60, maxDiscardRatio = 50)
  void withoutSandThePressureRisesWithTheFlowWhateverTheRheology(
      @ForAll long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.002, max = 10) double k,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1) double n) {
    Design design =
        with(
            plausible(seed),
            rheology(new HerschelBulkley(yield, k, n), 0),
            new MixtureSpec.ByVolume(0),
            Optional.empty());
    LineModel model = new LineModel(Materials.of(design));
    double area = new Bore(design.oneLine().route().runs().get(0).meanBoreM(), 0).areaM2();
    double before = 0;
    for (double velocity = 0.01; velocity < 12; velocity *= 1.04) {
      double pressure = model.runs(velocity * area, 0).get(0).friction().pa();
      assertThat(pressure).isGreaterThan(before);
      if (before > 0) {
        // No jump: the steepest of the laws, in the transition, stays far below this.
        assertThat(pressure / before).isLessThan(1.25);
      }
      before = pressure;
    }
  }

  @Property(tries = 60, maxDiscardRatio = 50)
  void aThickerLiquorNeverHasLessFriction(
      @ForAll @Scale(6) @DoubleRange(min = 2, max = 13) double solids,
      @ForAll @Scale(6) @DoubleRange(min = 2, max = 60) double litres) {
    Design design =
        line(
            "\"kind\": \"manure\", \"temperature\": \"10 degC\", \"totalSolids\": \""
                + solids
                + " %\"",
            FINE,
            0,
            litres,
            125,
            100,
            0,
            "");
    Assessment described = Evaluation.assess(design);
    Assessment.Band band = described.band().orElseThrow();
    double thin = friction(band.thinner());
    double middle = friction(described);
    double thick = friction(band.thicker());
    assertThat(band.scatter().factor()).isEqualTo(3);
    assertThat(thin).isLessThan(middle);
    assertThat(middle).isLessThan(thick);
  }

  private static double friction(Assessment assessment) {
    return run(assessment).friction().pa();
  }

  private static RunState run(Assessment assessment) {
    return assessment.line().orElseThrow().states().get(0).runs().get(0);
  }

  private static Severity worst(Assessment assessment, Topic topic) {
    return assessment.findings().stream()
        .filter(f -> f.topic() == topic)
        .map(Finding::severity)
        .reduce(Severity.PASS, Severity::or);
  }

  @Property(tries = 80, maxDiscardRatio = 50)
  void whatEitherEndOfTheBandFailsIsNeverAPass(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 13) double solids,
      @ForAll @Scale(6) @DoubleRange(min = 5, max = 60) double litres,
      @ForAll @Scale(6) @DoubleRange(min = 10, max = 300) double length) {
    Assessment described =
        Evaluation.assess(
            line(
                "\"kind\": \"manure\", \"temperature\": \"10 degC\", \"totalSolids\": \""
                    + solids
                    + " %\"",
                FINE,
                4,
                litres,
                125,
                length,
                0,
                ""));
    Assessment.Band band = described.band().orElseThrow();
    for (Topic topic : List.of(Topic.PLUGGING, Topic.PRESSURE)) {
      if (worst(band.thinner(), topic).or(worst(band.thicker(), topic)).compareTo(Severity.PASS)
          > 0) {
        assertThat(worst(described, topic)).isGreaterThan(Severity.PASS);
        assertThat(described.verdict()).isGreaterThan(Severity.PASS);
      }
    }
  }

  @Property(tries = 150, maxDiscardRatio = 50)
  void laminarFlowNeverPassesUnlessAYieldStressHoldsTheSandInBothBoresAndTheFloorIsSwept(
      @ForAll long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 80) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 60) double k,
      @ForAll @Scale(6) @DoubleRange(min = 0.25, max = 1) double n) {
    Assessment assessment =
        Evaluation.assess(with(plausible(seed), rheology(new HerschelBulkley(yield, k, n), 0)));
    for (LineState state : assessment.line().orElseThrow().states()) {
      for (RunState run : state.runs()) {
        if (run.carriage().isEmpty() || run.regime() == Regime.TURBULENT) {
          continue;
        }
        var carried = run.carriage().get();
        boolean may =
            run.regime() == Regime.LAMINAR
                && carried.support() == Support.CARRIED_BY_YIELD_STRESS
                && carried.yieldStressPa() >= carried.neededYieldStressPa()
                && carried.floorShare() <= carried.toleratedShare()
                && run.velocityMps() < carried.laminarBelowMps() * (1 + 1e-9)
                && carried.bedSlides();
        if (!may) {
          assertThat(run.severity()).isGreaterThan(Severity.PASS);
          assertThat(assessment.verdict()).isGreaterThan(Severity.PASS);
        }
      }
    }
  }

  @Example
  void theCoarseTailCountsAndNotOnlyD85() {
    // The same d50 and d85 but a tail of 10 % gravel up to 4.75 mm behind them.
    String even =
        "\"gradation\": [ { \"size\": \"0.1 mm\", \"passing\": \"0 %\" },"
            + " { \"size\": \"0.15 mm\", \"passing\": \"50 %\" },"
            + " { \"size\": \"0.22 mm\", \"passing\": \"85 %\" },"
            + " { \"size\": \"0.3 mm\", \"passing\": \"100 %\" } ]";
    String tailed =
        "\"gradation\": [ { \"size\": \"0.1 mm\", \"passing\": \"0 %\" },"
            + " { \"size\": \"0.15 mm\", \"passing\": \"50 %\" },"
            + " { \"size\": \"0.22 mm\", \"passing\": \"85 %\" },"
            + " { \"size\": \"0.3 mm\", \"passing\": \"90 %\" },"
            + " { \"size\": \"4.75 mm\", \"passing\": \"100 %\" } ]";
    String liquid = THICK.replace("40 Pa", "8 Pa").replace("\"36\"", "\"10\"");
    Assessment one = Evaluation.assess(line(liquid, even, 5, 10, 100, 1.5, 0, ""));
    Assessment other = Evaluation.assess(line(liquid, tailed, 5, 10, 100, 1.5, 0, ""));
    assertThat(run(one).severity()).isEqualTo(Severity.PASS);
    assertThat(run(other).severity()).isGreaterThan(Severity.PASS);
    assertThat(run(other).carriage().orElseThrow().coarsestM()).isGreaterThan(3e-3);
    assertThat(run(other).carriage().orElseThrow().floorShare())
        .isGreaterThan(5 * run(one).carriage().orElseThrow().floorShare());
  }

  @Example
  void aRiserIsJudgedByWhatSinksBackInIt() {
    Assessment level = Evaluation.assess(line(THICK, FINE, 5, 10, 100, 8, 0, ""));
    Assessment riser = Evaluation.assess(line(THICK, FINE, 5, 10, 100, 8, 8, ""));
    assertThat(run(level).severity()).isEqualTo(Severity.PASS);
    // Near the vertical there is no floor: next to nothing of the fine sand sinks back at the wall.
    assertThat(run(riser).carriage().orElseThrow().floorShare())
        .isBetween(0.0, run(level).carriage().orElseThrow().floorShare() / 100);
    assertThat(run(riser).severity()).isEqualTo(Severity.PASS);
    // Gravel sinks as fast as a slow thin liquor rises.
    String thin =
        "\"kind\": \"rheology\", \"law\": \"power law\", \"temperature\": \"10 degC\","
            + " \"density\": \"1010 kg/m3\", \"consistency\": \"0.3\", \"index\": \"0.6\"";
    Assessment gravel =
        Evaluation.assess(
            line(thin, "\"d50\": \"4 mm\", \"d85\": \"6 mm\"", 2, 1.5, 150, 8, 8, ""));
    assertThat(run(gravel).regime()).isEqualTo(Regime.LAMINAR);
    assertThat(run(gravel).carriage().orElseThrow().riseDemand()).isGreaterThan(1);
    assertThat(run(gravel).severity()).isEqualTo(Severity.FAIL);
  }

  @Example
  void aPlugThatTheNarrowerMeanBoreBreaksDoesNotPass() {
    Design design = line(THICK, FINE, 5, 10, 100, 8, 0, "");
    var run = design.oneLine().route().runs().get(0);
    Materials materials = Materials.of(design);
    LineModel model = new LineModel(materials);
    RunPoint even = model.run(run, 0.01, 0.05);
    assertThat(even.severity()).isEqualTo(Severity.PASS);
    var wide =
        new sandslurry.design.line.RouteSpec.RunSpec(
            run.name(),
            run.pipe(),
            run.largestBoreM(),
            0.02,
            run.ratingPa(),
            run.roughnessM(),
            run.lengthM(),
            run.riseM(),
            run.fittings());
    RunPoint uneven = model.run(wide, 0.01, 0.05);
    assertThat(uneven.regime()).isEqualTo(Regime.LAMINAR);
    assertThat(uneven.severity()).isGreaterThan(Severity.PASS);
  }

  private static String readings(double leastRate) {
    HerschelBulkley law = new HerschelBulkley(40, 36, 0.35);
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      double rate = leastRate * Math.pow(500 / leastRate, i / 7.0);
      rows.append(i == 0 ? "" : ",")
          .append("{ \"shearRate\": \"" + rate + " 1/s\", \"shearStress\": \"")
          .append(law.shearStressPa(rate) * (1 + (i % 2 == 0 ? 1e-3 : -1e-3)))
          .append(" Pa\" }");
    }
    return "\"kind\": \"readings\", \"law\": \"Herschel-Bulkley\", \"temperature\": \"5 degC\","
        + " \"density\": \"1040 kg/m3\", \"readings\": ["
        + rows
        + "]";
  }

  @Example
  void aYieldStressFarBelowTheReadingsCarriesNothing() {
    Assessment seen = Evaluation.assess(line(readings(0.1), FINE, 5, 10, 100, 8, 0, ""));
    Assessment guessed = Evaluation.assess(line(readings(20), FINE, 5, 10, 100, 8, 0, ""));
    assertThat(run(seen).severity()).isEqualTo(Severity.PASS);
    assertThat(run(guessed).severity()).isGreaterThan(Severity.PASS);
    assertThat(guessed.findings()).anyMatch(f -> f.reasons().contains("yield-not-seen"));
  }

  @Example
  void aFitBeyondItsReadingsIsNoPass() {
    String thin =
        "\"kind\": \"readings\", \"temperature\": \"12 degC\", \"density\": \"1010 kg/m3\","
            + " \"readings\": [ { \"shearRate\": \"5 1/s\", \"shearStress\": \"0.0454 Pa\" },"
            + " { \"shearRate\": \"20 1/s\", \"shearStress\": \"0.139 Pa\" },"
            + " { \"shearRate\": \"80 1/s\", \"shearStress\": \"0.423 Pa\" },"
            + " { \"shearRate\": \"400 1/s\", \"shearStress\": \"1.54 Pa\" } ]";
    Assessment assessment =
        Evaluation.assess(
            line(thin, "\"d50\": \"0.4 mm\", \"d85\": \"0.8 mm\"", 3, 23, 100, 100, 0, ""));
    assertThat(run(assessment).severity()).isEqualTo(Severity.PASS);
    assertThat(assessment.findings())
        .anyMatch(
            f ->
                f.topic() == Topic.DATA
                    && f.severity() == Severity.CAUTION
                    && f.id().equals("line.rheology-extrapolated"));
    assertThat(assessment.verdict()).isGreaterThan(Severity.PASS);
  }

  @Example
  void aLawThatFitsAsWellAndDoesNotHoldTheSandTakesThePassAway() {
    // Three readings fit a power law, a Bingham and nearly any other law about as well.
    String few =
        "\"kind\": \"readings\", \"law\": \"Bingham\", \"temperature\": \"5 degC\","
            + " \"density\": \"1040 kg/m3\", \"readings\": ["
            + " { \"shearRate\": \"10 1/s\", \"shearStress\": \"45 Pa\" },"
            + " { \"shearRate\": \"40 1/s\", \"shearStress\": \"67 Pa\" },"
            + " { \"shearRate\": \"160 1/s\", \"shearStress\": \"120 Pa\" } ]";
    Assessment assessment = Evaluation.assess(line(few, FINE, 5, 10, 100, 4, 0, ""));
    assertThat(run(assessment).severity()).isEqualTo(Severity.PASS);
    assertThat(assessment.findings())
        .anyMatch(
            f ->
                f.topic() == Topic.PLUGGING
                    && f.severity() == Severity.CAUTION
                    && f.id().equals("design.other-law"));
    assertThat(assessment.verdict()).isGreaterThan(Severity.PASS);
  }

  @Property(tries = 20, maxDiscardRatio = 50)
  void frostIsANoteUpToTwoDegreesAndNotAbove(@ForAll @IntRange(min = 1, max = 40) int tenths) {
    Assessment assessment =
        Evaluation.assess(
            line(
                "\"kind\": \"water\", \"temperature\": \"" + tenths / 10.0 + " degC\"",
                FINE,
                3,
                25,
                100,
                50,
                0,
                ""));
    assertThat(
            assessment.findings().stream()
                .anyMatch(
                    f -> f.severity() == Severity.NOTE && f.id().equals("line.near-freezing")))
        .isEqualTo(tenths <= 20);
  }

  @Property(tries = 15, maxDiscardRatio = 50)
  void theDilutionCurveKeepsSandAndSolids(
      @ForAll @Scale(6) @DoubleRange(min = 4, max = 12.5) double solids,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 3) double added,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 10) double sand) {
    Design design =
        line(
            "\"kind\": \"manure\", \"temperature\": \"10 degC\", \"totalSolids\": \""
                + solids
                + " %\"",
            FINE,
            sand,
            20,
            100,
            50,
            0,
            ", \"dilution\": { \"totalSolids\": \"" + added + " %\", \"mostRatio\": \"6\" }");
    Materials materials = Materials.of(design);
    DilutionCurve curve = new DilutionEvaluation(materials).curve();
    double density = materials.carrier().densityKgM3();
    double addedDensity =
        sandslurry.material.liquid.Carriers.manure(added / 100, 283.15).densityKgM3();
    double before = Double.MAX_VALUE;
    for (DilutionCurve.Point point : curve.points()) {
      double share = point.sandFraction();
      double dry = point.totalSolids();
      double volume = 1 + point.ratio();
      assertThat(share * volume).isCloseTo(sand / 100, within(1e-12));
      // Dry solids of one volume of undiluted mixture and of what was added, over all liquid.
      double liquid = (1 - sand / 100) * density + point.ratio() * addedDensity;
      assertThat(dry * liquid)
          .isCloseTo(
              solids / 100 * (1 - sand / 100) * density
                  + added / 100 * point.ratio() * addedDensity,
              within(1e-9 * liquid));
      assertThat(dry).isLessThan(before);
      before = dry;
      if (sand == 0) {
        assertThat(point.support()).isEmpty();
        assertThat(point.severity()).isEqualTo(Severity.PASS);
      }
    }
    assertThat(curve.points().get(0).ratio()).isZero();
    assertThat(curve.points().get(0).totalSolids()).isCloseTo(solids / 100, within(1e-15));
    assertThat(curve.points().get(curve.points().size() - 1).ratio()).isEqualTo(6);
  }

  @Example
  void theFirstPointOfTheCurveIsTheLineItself() {
    Design design =
        line(THICK, FINE, 5, 10, 100, 8, 0, ", \"dilution\": { \"mostRatio\": \"12\" }");
    Assessment assessment = Evaluation.assess(design);
    DilutionCurve.Point first = assessment.dilution().orElseThrow().points().get(0);
    RunState run = run(assessment);
    assertThat(first.severity()).isEqualTo(run.severity());
    assertThat(first.regime()).isEqualTo(run.regime());
    assertThat(first.floorShare()).isEqualTo(run.carriage().orElseThrow().floorShare());
    double gradient = run.friction().pa() / 8;
    assertThat(first.pressureGradientPaPm()).isCloseTo(gradient, within(1e-12 * gradient));
  }

  @Example
  void zeroSandInAThickLiquorIsJustTheLiquor() {
    Assessment assessment = Evaluation.assess(line(THICK, FINE, 0, 10, 100, 8, 0, ""));
    RunState run = run(assessment);
    assertThat(run.carriage()).isEmpty();
    assertThat(run.severity()).isEqualTo(Severity.PASS);
    assertThat(run.friction().slurryGradient()).isEqualTo(run.flow().gradient());
  }

  @Property(tries = 100, maxDiscardRatio = 50)
  void extremeDesignsOfAnyCarrierNeverFailToBeAssessed(@ForAll long seed) {
    Optional<Design> design = Documents.parse(RandomDesigns.extreme(seed)).read().design();
    Assume.that(design.isPresent());
    Assessment assessment =
        Evaluation.assess(with(design.get(), rheology(new HerschelBulkley(500, 500, 0.1), 0)));
    assertThat(assessment.findings()).isNotNull();
  }
}
