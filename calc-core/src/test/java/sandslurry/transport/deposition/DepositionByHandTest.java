package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.fact.step.Followed;
import sandslurry.fact.step.Step;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SievePoint;
import sandslurry.pipe.Bore;
import sandslurry.pipe.CircularSegment;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;
import sandslurry.transport.deposition.DepositionVelocities.Role;

/** Deposition with values worked by hand, and verdicts at their very limits. */
class DepositionByHandTest {
  private static final Liquid WATER = new Liquid(1000, 1e-3);
  private static final Bore PIPE = new Bore(0.15, 5e-5);

  private static final String[] DILUTE = {
    "oroskar-turian-1980-regression", "may-1996", "macke-1982", "ab-ghani-1993"
  };

  private static SandLoad sand(double sizeM, double fraction) {
    return SandLoad.even(new Slurry(WATER, 2650, GrainShape.NATURAL, sizeM, sizeM, fraction));
  }

  /**
   * 0.05 % of sand of 0.46 mm in a pipe of 0.3 m half full, friction factor 0.02: A = 0.0353429 m2,
   * depth 0.15 m, R = 0.075 m. May: Vt = 0.125 √(g 1.65 d) (0.15/d)^0.47 = 0.163703, and C = 0.0303
   * (D²/A) (d/D)^0.6 (V²/(g 1.65 D))^1.5 (1 - Vt/V)⁴ is 5e-4 at 1.71601. Macke with w = 0.0653799
   * (Ferguson and Church): V = (30.4 · 1.65 w^1.5 A C/0.02³)^0.2. Ab Ghani with Dgr = 11.6348 and a
   * bed friction factor of 1.13 · 0.02^0.98 C^0.02 Dgr^0.01 = 0.0215142. Worked out apart from this
   * program; coefficients as in the correlations, from memory, unverified.
   */
  @Test
  void aGravityPipeHalfFullHasTheThreeVelocitiesOfSewers() {
    SandLoad.SewerLimit limit = sand(0.46e-3, 5e-4).sewerLimit(new CircularSegment(0.3, 0.5), 0.02);
    assertThat(limit.mayMps()).isCloseTo(1.716015, within(1e-6));
    assertThat(limit.mackeMps()).isCloseTo(1.131205, within(1e-6));
    assertThat(limit.abGhaniMps()).isCloseTo(1.438619, within(1e-6));
    assertThat(limit.governingMps()).isEqualTo(limit.mayMps());
    assertThat(limit.leastMps()).isEqualTo(limit.mackeMps());
    assertThat(new SandLoad.SewerLimit(1, 2, 3).governingMps()).isEqualTo(3);
    assertThat(new SandLoad.SewerLimit(1, 2, 3).leastMps()).isEqualTo(1);
  }

  /**
   * In 0.15 m the fit of Wilson (1986) has its peak at d² = 7 · 0.11 · 0.15^0.7 = 0.204058 mm², d =
   * 0.451728 mm; 0.4 · 1.65/0.66 = 1, so it is 8.8 · 0.265011 · d^1.75/(d² + 0.0291512) = 2.48906
   * m/s. Coarser grains are held there. Worked out apart; coefficients from memory, unverified.
   */
  @Test
  void coarseSandIsHeldAtThePeakOfTheFit() {
    Slurry gravel = new Slurry(WATER, 2650, GrainShape.NATURAL, 5e-3, 5e-3, 0.01);
    assertThat(Wilson1986Fit.risingMps(gravel, 5e-3, PIPE, Trace.NONE))
        .isCloseTo(2.4890595, within(1e-6));
    assertThat(Wilson1986Fit.risingMps(gravel, 0.2e-3, PIPE, Trace.NONE)).isLessThan(2.4);
  }

  @ParameterizedTest
  @CsvSource({"0, 0.02", "5e-4, 0", "5e-4, NaN"})
  void aGravityPipeWithoutSandOrFrictionHasNoLimit(double fraction, double friction) {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> sand(0.46e-3, fraction).sewerLimit(new CircularSegment(0.3, 0.5), friction))
        .withMessageContaining("limit of deposition");
  }

  /**
   * The share min(1, R/0.5) min(1, R/0.02) of the sand retained: all at one half, 0.2 at a tenth,
   * 0.04 at 2 %, 0.01 at 1 %, 0.0009 at 0.3 %.
   */
  @Test
  void aTailCountsTwiceAndFadesOut() {
    Gradation gradation = Gradation.ofD50D85(4e-4, 8e-4);
    SandLoad.Sizes sizes = SandLoad.Sizes.of(gradation);
    assertThat(sizes.sizeM(0)).isCloseTo(4e-4, within(1e-12));
    assertThat(sizes.share(0)).isEqualTo(1);
    for (double retained : new double[] {0.10, 0.02, 0.01, 0.003}) {
      double size = gradation.sizePassingM(1 - retained);
      int at =
          IntStream.range(0, sizes.count())
              .filter(i -> Math.abs(sizes.sizeM(i) / size - 1) < 1e-12)
              .findFirst()
              .orElseThrow();
      assertThat(sizes.share(at))
          .as("%s", retained)
          .isCloseTo(
              retained == 0.10 ? 0.2 : retained == 0.02 ? 0.04 : retained == 0.01 ? 0.01 : 0.0009,
              within(1e-12));
    }
    for (int i = 1; i < sizes.count(); i++) {
      assertThat(sizes.sizeM(i)).isGreaterThanOrEqualTo(sizes.sizeM(i - 1));
      assertThat(sizes.share(i)).isLessThanOrEqualTo(sizes.share(i - 1));
    }
    assertThat(sizes.coarsestM()).isEqualTo(gradation.sizePassingM(0.99));
  }

  /** What is required is enough, and what is at the limit is not below it. */
  @ParameterizedTest
  @CsvSource({
    "1.999, 2, 2.5, 3, BELOW_LIMIT",
    "2,     2, 2.5, 3, WITHIN_MARGIN",
    "2.499, 2, 2.5, 3, WITHIN_MARGIN",
    "2.5,   2, 2.5, 3, MODELS_DISAGREE",
    "2.5,   2, 2.5, 0, CLEAR",
    "3,     2, 2.5, 3, CLEAR"
  })
  void aVelocityIsJudgedAtItsVeryLimits(
      double velocity, double limit, double required, double counted, Outcome outcome) {
    assertThat(DepositionRule.outcome(velocity, limit, required, counted)).isEqualTo(outcome);
  }

  @Test
  void aJudgementAtAnotherVelocityIsThatOfTheRule() {
    SandLoad load = sand(5e-4, 0.01);
    DepositionJudgement one = DepositionRule.DEFAULT.judge(load, PIPE, 1, 0);
    assertThat(one.at(1)).isSameAs(one);
    double pass = one.requiredMps();
    assertThat(one.at(pass).outcome()).isEqualTo(Outcome.CLEAR);
    assertThat(one.at(pass)).isEqualTo(DepositionRule.DEFAULT.judge(load, PIPE, pass, 0));
    DepositionJudgement rest = DepositionRule.DEFAULT.judge(load, PIPE, 0, 0);
    assertThat(rest.outcome()).isEqualTo(Outcome.BELOW_LIMIT);
    assertThat(rest.at(1)).isEqualTo(one);
    assertThat(one.at(one.slugMps()).slugSettles()).isFalse();
    assertThat(one.at(one.slugMps() * 0.999).slugSettles()).isTrue();
    assertThat(one.lifting()).isFalse();
  }

  /** With its power of the friction factor the velocity found has the value asked for. */
  @ParameterizedTest
  @CsvSource({"0.13, 1.5", "0.6, 0.2", "0.2058, 0.9", "0.6, 1e-4"})
  void theVelocityThatAgreesWithItsFriction(double power, double value) {
    Slurry slurry = sand(5e-4, 0.01).slurry();
    double velocity = VelocityScale.atFrictionMps(slurry, PIPE, power, value);
    assertThat(velocity * Math.pow(VelocityScale.friction(slurry, PIPE, velocity), power))
        .isCloseTo(value, within(1e-11 * value));
  }

  @Test
  void marginsWithoutEndAndLoadsWithoutOrderAreRefused() {
    double none = Double.POSITIVE_INFINITY;
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DepositionRule(none, 0, true, Map.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DepositionRule(0, -0.1, true, Map.of()));
    SandLoad load = sand(5e-4, 0.01);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SandLoad(load.slurry(), 1, load.sizes()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DepositionRule.DEFAULT.judge(load, PIPE, none, 0));
  }

  /** A part of the limit made a floor still is a part of it; one merely shown is not. */
  @Test
  void aPartPlaysTheRoleThatItIsGiven() {
    DepositionRule rule =
        new DepositionRule(
            0.25, 0.3, true, Map.of("may-1996", Role.FLOOR, "macke-1982", Role.SHOWN));
    assertThat(rule.governs(DepositionLimit.MAY)).isTrue();
    assertThat(rule.governs(DepositionLimit.MACKE)).isFalse();
    assertThat(rule.floors()).containsExactly(DepositionLimit.MAY);
    assertThat(rule.demoted()).containsExactly(DepositionLimit.MACKE);
    assertThat(DepositionRule.DEFAULT.floors()).isEmpty();
  }

  private static Map<String, Role> shown(String... keys) {
    return Stream.of(keys).collect(Collectors.toMap(key -> key, key -> Role.SHOWN));
  }

  /**
   * Every step of a judgement gives what its printed equation makes of its printed inputs, among
   * them the limit as max(V_T, V_OT, min(V_max, max(V_r V_max, V_2)), V_F), for sand that Thomas,
   * Oroskar and Turian, the sewers, the concentration and the largest velocity set, on any slope.
   */
  @ParameterizedTest
  @CsvSource({
    "0.5, 0.01, 1, 0.15, 0, -",
    "0.5, 1e-3, 1, 0.15, 0, -",
    "0.5, 2e-4, 1, 0.15, 0, -",
    "0.5, 1e-7, 1, 0.15, 0, -",
    "3, 5e-4, 1, 0.3, 0, -",
    "0.3, 0.2, 1, 0.15, 0, -",
    "1, 0.08, 1, 0.25, 0, -",
    "0.03, 0.05, 1, 0.15, 0, -",
    "0.4, 0.02, 7, 0.15, 0, -",
    "0.4, 0.02, 1, 0.7, 0, -",
    "0.5, 0.01, 1, 0.15, 20, -",
    "0.5, 0.1, 1, 0.15, 50, -",
    "0.5, 0.1, 1, 0.15, -20, -",
    "2, 0.05, 1, 0.15, 67.5, -",
    "0.1, 0.1, 1, 0.15, 90, -",
    "0.3, 0.1, 1, 0.15, 0, COUNTED",
    "0.3, 0.1, 1, 0.15, 30, COUNTED",
    "0.3, 0.1, 1, 0.15, 0, FLOOR",
    "0.5, 1e-3, 1, 0.15, 0, NO SEWERS",
    "0.5, 1e-3, 1, 0.15, 0, NO FACTOR",
    "0.5, 1e-3, 1, 0.15, 0, NO DILUTE",
    "0.5, 0.2, 1, 0.15, 0, NO DILUTE",
    "0.5, 1e-7, 1, 0.15, 0, NO THOMAS",
    "0.3, 0.2, 1, 0.15, 0, NO WILSON",
    "0.3, 0.2, 1, 0.15, 0, NO GILLIES"
  })
  void everyStepOfAJudgementCanBeFollowed(
      double millimetres,
      double fraction,
      double mm2ps,
      double bore,
      double degrees,
      String roles) {
    String plateau = "durand-plateau-english";
    DepositionRule rule =
        new DepositionRule(
            0.25,
            0.3,
            true,
            switch (roles) {
              case "COUNTED" -> Map.of(plateau, Role.COUNTED);
              case "FLOOR" -> Map.of(plateau, Role.FLOOR);
              case "NO SEWERS" -> shown("may-1996", "macke-1982", "ab-ghani-1993");
              case "NO FACTOR" -> shown("wilson-concentration-2006");
              case "NO DILUTE" -> shown(DILUTE);
              case "NO THOMAS" -> shown("thomas-1979");
              case "NO WILSON" -> shown("wilson-bounded");
              case "NO GILLIES" -> shown("gillies-shook-2002");
              default -> Map.of();
            });
    double size = millimetres * 1e-3;
    Slurry slurry =
        new Slurry(
            new Liquid(1000, mm2ps * 1e-3), 2650, GrainShape.NATURAL, size, 2 * size, fraction);
    SandLoad load =
        new SandLoad(slurry, 1.5 * fraction, SandLoad.Sizes.of(Gradation.ofD50D85(size, 2 * size)));
    Trace trace = Trace.recording();
    DepositionJudgement judgement =
        rule.judge(load, new Bore(bore, 5e-5), 2, Math.toRadians(degrees), trace);
    Followed.all(trace.steps());
    assertThat(trace.steps())
        .extracting(Step::value)
        .contains(judgement.limitMps(), judgement.requiredMps(), judgement.limiting().valueMps());
    // On a slope the velocities of the level pipe are told apart from its own.
    boolean flat = degrees == 0;
    assertThat(trace.steps())
        .extracting(Step::symbol)
        .contains(flat ? "V_h" : "V_h0", flat ? "V_u" : "V_u0", flat ? "V_s" : "V_s0", "V_req");
    assertThat(trace.steps().stream().filter(step -> step.symbol().equals("V_WB")))
        .hasSize(roles.equals("NO WILSON") ? 0 : 1)
        .allMatch(step -> step.value() > 0);
    // A relation that takes no part is no velocity of -1 m/s.
    assertThat(trace.steps()).allMatch(step -> step.inputs().stream().allMatch(x -> x > -1));
    assertThat(judgement.largestCounted().isPresent()).isEqualTo(roles.equals("COUNTED"));
    assertThat(trace.steps())
        .extracting(Step::value)
        .contains(judgement.velocityToPassMps(), judgement.widening());
    assertThat(judgement)
        .isEqualTo(rule.judge(load, new Bore(bore, 5e-5), 2, Math.toRadians(degrees)));
  }

  private static double limit(DepositionRule rule, SandLoad load, double degrees) {
    return rule.judge(load, PIPE, 1, Math.toRadians(degrees)).limitMps();
  }

  /** max{1.25 V(0.5 %), 1.15 V(3 %), V(3 %) + 0.3}, and no more than what a slug needs. */
  @ParameterizedTest
  @CsvSource({"0.005, 0.03", "0.02, 0.021", "1e-4, 1e-3"})
  void theUsualAndTheHighestConcentrationAskTogether(double usual, double high) {
    DepositionRule rule = DepositionRule.DEFAULT;
    SandLoad even = sand(5e-4, usual);
    double ofUsual = limit(rule, even, 0);
    double ofHigh = limit(rule, sand(5e-4, high), 0);
    DepositionJudgement judgement =
        rule.judge(new SandLoad(even.slurry(), high, even.sizes()), PIPE, 1, 0);
    double slug = judgement.slugMps();
    assertThat(judgement.limitMps()).isCloseTo(ofHigh, within(1e-12));
    assertThat(judgement.requiredMps())
        .isCloseTo(
            Math.min(
                Math.max(1.25 * ofUsual, Math.max(1.15 * ofHigh, ofHigh + 0.3)),
                Math.max(1.15 * slug, slug + 0.3)),
            within(1e-9));
  }

  /** A slug needs no less on a slope: 0.27 √(2 g D (s - 1)) more at 20 degrees (Wilson and Tse). */
  @Test
  void aSlugOnASlopeNeedsItsIncrement() {
    SandLoad much = sand(5e-4, 0.2);
    double level = DepositionRule.DEFAULT.judge(much, PIPE, 1, 0).slugMps();
    double root = Math.sqrt(2 * 9.80665 * 0.15 * 1.65);
    assertThat(DepositionRule.DEFAULT.judge(much, PIPE, 1, Math.toRadians(20)).slugMps())
        .isCloseTo(level + 0.27 * root, within(1e-6));
    // In a riser a slug of grains of 2 mm needs what lifts them, as less sand does.
    DepositionJudgement riser =
        DepositionRule.DEFAULT.judge(sand(2e-3, 0.05), PIPE, 1, Math.PI / 2);
    assertThat(riser.slugMps()).isCloseTo(riser.riserMps(), within(1e-12));
  }

  /**
   * Straight down the sand falls with the water; half of the way from 60 to 75 degrees, as upward.
   */
  @Test
  void aSteepFallIsJudgedLikeASteepRiseWithoutItsIncrement() {
    SandLoad coarse = sand(2e-3, 0.05);
    DepositionRule rule = DepositionRule.DEFAULT;
    double level = limit(rule, coarse, 0);
    double fall = limit(rule, coarse, 90);
    assertThat(limit(rule, coarse, -60)).isCloseTo(level, within(1e-9));
    assertThat(limit(rule, coarse, -67.5))
        .isCloseTo(Math.sqrt(level * fall * Math.sin(Math.toRadians(67.5))), within(1e-9));
    assertThat(limit(rule, coarse, -90)).isCloseTo(fall, within(1e-9));
  }

  /** Of what the user lets count the largest speaks, unless it lies outside its range. */
  @Test
  void theLargestOfWhatCountsInItsRangeSpeaks() {
    DepositionRule rule =
        new DepositionRule(
            0.25,
            0.3,
            true,
            Map.of("durand-plateau-english", Role.COUNTED, "durand-plateau-french", Role.COUNTED));
    DepositionJudgement inside = rule.judge(sand(1e-3, 0.1), PIPE, 1, 0);
    assertThat(inside.largestCounted().orElseThrow().model()).isSameAs(DurandPlateau.ENGLISH);
    // Ab Ghani tested up to 0.145 % of sand.
    DepositionRule sewer =
        new DepositionRule(0.25, 0.3, true, Map.of("ab-ghani-1993", Role.COUNTED));
    assertThat(sewer.judge(sand(1e-3, 1e-3), new Bore(0.3, 5e-5), 1, 0).largestCounted())
        .isPresent();
    assertThat(sewer.judge(sand(1e-3, 0.1), new Bore(0.3, 5e-5), 1, 0).largestCounted()).isEmpty();
  }

  /** In a riser a counted velocity is held to what lifts the grains, as the limit is. */
  @Test
  void aCountedVelocityFallsInARiserToo() {
    DepositionRule rule =
        new DepositionRule(0.25, 0.3, true, Map.of("durand-plateau-english", Role.COUNTED));
    DepositionJudgement riser = rule.judge(sand(5e-3, 0.1), PIPE, 1, Math.PI / 2);
    assertThat(riser.velocityToPassMps()).isCloseTo(riser.requiredMps(), within(1e-12));
  }

  /**
   * The rule for sand of one size in water of 20 degC, put together from the published values:
   * max(V_T, V_OT, min(V_max, max(V_r V_max, second largest of OT, May, Macke, Ab Ghani))), those
   * of sewers to 0.2 % of sand, May and Ab Ghani for 0.46 mm. What the user only shows is left out,
   * and of one relation left that one counts. The rule finds it without asking each.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "may-1996",
        "macke-1982",
        "ab-ghani-1993",
        "oroskar-turian-1980-regression",
        "may-1996 macke-1982",
        "may-1996 ab-ghani-1993",
        "macke-1982 ab-ghani-1993",
        "may-1996 macke-1982 ab-ghani-1993",
        "oroskar-turian-1980-regression may-1996 macke-1982",
        "oroskar-turian-1980-regression may-1996 ab-ghani-1993",
        "oroskar-turian-1980-regression macke-1982 ab-ghani-1993",
        "oroskar-turian-1980-regression may-1996 macke-1982 ab-ghani-1993",
        "thomas-1979",
        "thomas-1979 wilson-concentration-2006",
        "wilson-bounded",
        "gillies-shook-2002"
      })
  void theLimitIsThatOfItsPartsAtAnyConcentrationSizeAndBore(String shown) {
    Liquid water = new Liquid(998.2, 998.2 * 1.0034e-6);
    List<String> left = shown.isEmpty() ? List.of() : List.of(shown.split(" "));
    DepositionRule rule = new DepositionRule(0.25, 0.3, true, shown(left.toArray(String[]::new)));
    for (double c : new double[] {1e-6, 1e-4, 5e-4, 2e-3, 1e-2, 3e-2, 0.1, 0.25}) {
      for (double d : new double[] {3e-5, 1e-4, 3e-4, 5e-4, 1e-3, 3e-3}) {
        for (double bore : new double[] {0.08, 0.15, 0.4}) {
          Slurry slurry = new Slurry(water, 2650, GrainShape.NATURAL, d, d, c);
          holdsOfItsParts(rule, slurry, new Bore(bore, 5e-5), left);
        }
      }
    }
  }

  /**
   * A velocity is exceeded by what dilute sand needs exactly if it is below it: told once by what
   * each relation lets that velocity carry, once by the velocities of all and the second largest of
   * them.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "may-1996",
        "macke-1982",
        "ab-ghani-1993",
        "oroskar-turian-1980-regression",
        "may-1996 macke-1982",
        "may-1996 ab-ghani-1993",
        "macke-1982 ab-ghani-1993",
        "may-1996 macke-1982 ab-ghani-1993",
        "oroskar-turian-1980-regression may-1996 macke-1982",
        "oroskar-turian-1980-regression may-1996 ab-ghani-1993",
        "oroskar-turian-1980-regression macke-1982 ab-ghani-1993",
        "oroskar-turian-1980-regression may-1996 macke-1982 ab-ghani-1993"
      })
  void dilutedSandExceedsAVelocityBelowItsOwn(String shown) {
    List<String> left = shown.isEmpty() ? List.of() : List.of(shown.split(" "));
    DepositionRule rule = new DepositionRule(0.25, 0.3, true, shown(left.toArray(String[]::new)));
    boolean suspending = !left.contains("oroskar-turian-1980-regression");
    for (double c : new double[] {0, 1e-6, 1e-4, 1e-3, 0.002, 0.05}) {
      for (double d : new double[] {1e-4, 5e-4, 3e-3}) {
        for (double bore : new double[] {0.08, 0.4}) {
          SandLoad load = sand(d, c);
          Bore pipe = new Bore(bore, 5e-5);
          DepositionLimit limit = new DepositionLimit(rule, load.slurry(), load.sizes(), pipe);
          SandLoad.Sizes.InBore.Crowd crowd =
              load.sizes().in(pipe, load.slurry().densityRatio()).at(c);
          for (double oroskar :
              suspending ? new double[] {0, 0.3, 0.8, 1.5, 9} : new double[] {-1}) {
            double needed = limit.sewers.secondLargest(oroskar, limit.uniform(0, crowd)).mps();
            for (double share : new double[] {0.1, 0.5, 0.999, 1.001, 1.5, 4}) {
              double velocity = needed > 0 ? share * needed : share;
              assertThat(limit.sewers.exceed(velocity, oroskar, crowd, 0))
                  .as("%s %s %s %s %s", c, d, bore, oroskar, share)
                  .isEqualTo(velocity < needed);
            }
          }
        }
      }
    }
  }

  private static void holdsOfItsParts(
      DepositionRule rule, Slurry slurry, Bore pipe, List<String> left) {
    double d = slurry.d50M();
    double c = slurry.volumeFraction();
    Slurry dilute = slurry.withVolumeFraction(Math.min(c, 0.002));
    Slurry finest = dilute.ofUniformSize(0.46e-3);
    double thomas =
        left.contains("thomas-1979") ? 0 : new Thomas1979().velocityMps(slurry, pipe).value();
    Map<String, Double> four = new HashMap<>();
    four.put(
        "oroskar-turian-1980-regression",
        new OroskarTurian1980Regression().velocityMps(slurry, pipe).value());
    four.put("may-1996", new May1996().velocityMps(finest, pipe).value());
    four.put("macke-1982", new Macke1982().velocityMps(dilute, pipe).value());
    four.put("ab-ghani-1993", new AbGhani1993().velocityMps(finest, pipe).value());
    four.keySet().removeAll(left);
    double oroskar = four.getOrDefault("oroskar-turian-1980-regression", 0.0);
    List<Double> sorted = four.values().stream().sorted(Comparator.reverseOrder()).toList();
    double second = sorted.isEmpty() ? 0 : sorted.get(Math.min(1, sorted.size() - 1));
    double gillies =
        left.contains("gillies-shook-2002")
            ? 0
            : GilliesShook.risingMps(slurry, slurry.d50M(), pipe, Trace.NONE);
    double wilson =
        left.contains("wilson-bounded")
            ? 0
            : Math.min(
                Wilson1986Fit.risingMps(slurry, d, pipe, Trace.NONE),
                WilsonBounded.upperBoundMps(slurry, pipe));
    double most = Math.max(gillies, wilson);
    double factor =
        left.contains("wilson-concentration-2006")
            ? 1
            : WilsonConcentration2006.factor(slurry, d, c, pipe, Trace.NONE);
    double rest = Math.min(most, Math.max(factor * most, second));
    double expected = Math.max(Math.max(thomas, oroskar), rest);

    DepositionJudgement judgement = rule.judge(SandLoad.even(slurry), pipe, 1, 0);
    assertThat(judgement.limitMps())
        .as("%s %s %s", c, d, pipe)
        .isCloseTo(expected, within(1e-9 * expected));
    assertThat(judgement.slugMps()).isCloseTo(Math.max(most, expected), within(1e-9 * expected));
    String set = judgement.limiting().model().id();
    if (expected == thomas) {
      assertThat(set).isEqualTo("thomas-1979");
    } else if (expected == oroskar) {
      assertThat(set).startsWith("oroskar-turian");
    } else if (expected > second * (1 + 1e-9) && factor < 1) {
      assertThat(set).isEqualTo("wilson-concentration-2006");
    } else if (expected < most * (1 - 1e-9)) {
      assertThat(four.get(set)).as(set).isCloseTo(second, within(1e-9 * second));
    } else {
      assertThat(set).isEqualTo(gillies >= wilson ? "gillies-shook-2002" : "wilson-bounded");
    }
  }

  /**
   * C^0.1536 (1 - C)^0.3564 is greatest at C = 0.1536/0.51 = 0.301176; thicker mixtures are held
   * there. In liquor of 20 mm2/s Oroskar and Turian set the limit of fine sand.
   */
  @Test
  void oroskarAndTurianAreHeldAtTheirPeak() {
    Slurry thick =
        new Slurry(new Liquid(1000, 20e-3), 2650, GrainShape.NATURAL, 1.5e-4, 1.5e-4, 0.45);
    DepositionJudgement judgement = DepositionRule.DEFAULT.judge(SandLoad.even(thick), PIPE, 1, 0);
    assertThat(judgement.limiting().model()).isSameAs(DepositionLimit.OROSKAR_TURIAN);
    double atPeak =
        new OroskarTurian1980Regression()
            .velocityMps(thick.withVolumeFraction(0.3011764706), PIPE)
            .value();
    assertThat(judgement.limitMps()).isCloseTo(atPeak, within(1e-9));
    double beyond = new OroskarTurian1980Regression().velocityMps(thick, PIPE).value();
    assertThat(judgement.limitMps() / beyond)
        .isCloseTo(
            Math.pow(0.3011764706 / 0.45, 0.1536) * Math.pow(0.6988235294 / 0.55, 0.3564),
            within(1e-9));
  }

  /**
   * Judged are seventeen shares retained; a row a hundred times as fine asks for 1.3 % more at
   * most, where the sewers end at 0.2 % of sand between two of them.
   */
  @ParameterizedTest
  @CsvSource({
    "0.15, 0.3, 0.002",
    "0.15, 0.3, 0.05",
    "0.4, 0.8, 0.005",
    "0.4, 1.6, 0.05",
    "0.2, 2, 0.15"
  })
  void theRowOfSharesMissesNothingBetweenThem(double d50, double d85, double fraction) {
    Gradation sand = Gradation.ofD50D85(d50 * 1e-3, d85 * 1e-3);
    Slurry slurry = new Slurry(WATER, 2650, GrainShape.NATURAL, sand.d50M(), sand.d85M(), fraction);
    double judged =
        limit(DepositionRule.DEFAULT, new SandLoad(slurry, fraction, SandLoad.Sizes.of(sand)), 0);
    double most = 0;
    for (double retained = 0.5; retained >= 0.002999; retained *= 0.99897) {
      double share = Math.min(1, retained / 0.5) * Math.min(1, retained / 0.02);
      most =
          Math.max(
              most,
              limit(
                  DepositionRule.DEFAULT,
                  sand(sand.sizePassingM(1 - retained), fraction * share),
                  0));
    }
    assertThat(judged).isBetween(0.985 * most, most * (1 + 1e-4));
  }

  /** Who judges by d50 alone compares by d50 alone too. */
  @Test
  void aComparisonLooksAtTheSizesThatAreJudged() {
    Gradation wide = Gradation.ofD50D85(2e-4, 1.5e-3);
    Slurry slurry = new Slurry(WATER, 2650, GrainShape.NATURAL, 2e-4, 1.5e-3, 0.02);
    SandLoad load = new SandLoad(slurry, 0.02, SandLoad.Sizes.of(wide));
    assertThat(new DepositionRule(0.25, 0.3, false, Map.of()).compare(load, PIPE))
        .allMatch(entry -> Math.abs(entry.sizeM() - 2e-4) < 1e-12 && entry.fraction() == 0.02);
    assertThat(DepositionRule.DEFAULT.compare(load, PIPE))
        .anyMatch(entry -> entry.sizeM() > 3e-4 && entry.fraction() < 0.02);
  }

  /** A sieve between the fixed shares is judged too: here 12 % is retained on 2 mm. */
  @Test
  void everySieveOfTheCoarseHalfIsASize() {
    Gradation gap =
        Gradation.of(
            List.of(
                new SievePoint(1e-4, 0.05),
                new SievePoint(3e-4, 0.5),
                new SievePoint(4e-4, 0.88),
                new SievePoint(2e-3, 0.88),
                new SievePoint(4e-3, 1)));
    SandLoad.Sizes sizes = SandLoad.Sizes.of(gap);
    List<Double> judged = IntStream.range(0, sizes.count()).mapToObj(sizes::sizeM).toList();
    assertThat(judged).contains(4e-4, 2e-3).doesNotContain(1e-4, 4e-3);
    assertThat(sizes.share(judged.indexOf(2e-3))).isCloseTo(0.24, within(1e-9));
    // Of a gravity pipe the worst size speaks by Macke, whose velocity rises as w^0.3 C^0.2.
    Slurry slurry = new Slurry(WATER, 2650, GrainShape.NATURAL, gap.d50M(), gap.d85M(), 1e-3);
    CircularSegment half = new CircularSegment(0.3, 0.5);
    double worst = 0;
    for (int i = 0; i < sizes.count(); i++) {
      worst =
          Math.max(
              worst, sand(sizes.sizeM(i), 1e-3 * sizes.share(i)).sewerLimit(half, 0.02).mackeMps());
    }
    assertThat(new SandLoad(slurry, 1e-3, sizes).sewerLimit(half, 0.02).mackeMps())
        .isCloseTo(worst, within(1e-12));
  }

  /** Below 2 m/s the margin of 0.3 m/s is more than 15 %, over a slug too. */
  @Test
  void aSlowSlugIsGivenTheMarginInMetresPerSecond() {
    DepositionJudgement judgement =
        DepositionRule.DEFAULT.judge(sand(5e-4, 0.25), new Bore(0.05, 5e-5), 1, 0);
    assertThat(judgement.slugMps()).isBetween(1.2, 2.0).isEqualTo(judgement.limitMps());
    assertThat(judgement.requiredMps()).isCloseTo(judgement.slugMps() + 0.3, within(1e-12));
  }

  /** What is part of the limit by nature is no floor besides; another that governs is one. */
  @Test
  void onlyWhatIsNoPartOfTheLimitBecomesAFloorByGoverning() {
    assertThat(
            new DepositionRule(
                    0.25,
                    0.3,
                    true,
                    Map.of("gillies-shook-2002", Role.GOVERNING, "wasp-1977", Role.GOVERNING))
                .floors())
        .extracting(DepositionVelocityModel::id)
        .containsExactly("wasp-1977");
  }
}
