package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SievePoint;
import sandslurry.pipe.Bore;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;

/**
 * What the rule must keep whatever it is made of: no worsening of a case makes it look better, and
 * nothing jumps. {@code -Dsandslurry.rule.cases=200000} tries that many cases in place of few.
 */
class DepositionRuleProperties {
  private static final int CASES = Integer.getInteger("sandslurry.rule.cases", 1500);
  private static final double ROUNDING = 1e-9;
  private static final double STEP = 1.001;
  private static final double LARGEST_JUMP = 0.02;

  /** All that a judgement depends on but for the velocity. */
  private record Case(
      List<SievePoint> sieves,
      double densityKgM3,
      double viscosityPaS,
      double liquidKgM3,
      double fraction,
      double peak,
      double boreM,
      double roughnessM,
      double angleRad) {
    DepositionJudgement judge(double velocityMps) {
      Gradation sand = Gradation.of(sieves);
      Slurry slurry =
          new Slurry(
              new Liquid(liquidKgM3, viscosityPaS),
              densityKgM3,
              GrainShape.NATURAL,
              sand.d50M(),
              sand.d85M(),
              fraction);
      double highest = Math.min(0.4, Math.max(fraction, fraction * peak));
      return DepositionRule.DEFAULT.judge(
          new SandLoad(slurry, highest, SandLoad.Sizes.of(sand)),
          new Bore(boreM, roughnessM),
          velocityMps,
          angleRad);
    }

    Case coarser(double factor) {
      return new Case(
          sieves.stream()
              .map(s -> new SievePoint(s.sizeM() * factor, s.fractionPassing()))
              .toList(),
          densityKgM3,
          viscosityPaS,
          liquidKgM3,
          fraction,
          peak,
          boreM,
          roughnessM,
          angleRad);
    }

    /** Less passes every sieve but the last. */
    Case moreTail(double factor) {
      List<SievePoint> changed = new ArrayList<>();
      for (SievePoint s : sieves) {
        changed.add(
            new SievePoint(s.sizeM(), s.fractionPassing() == 1 ? 1 : s.fractionPassing() / factor));
      }
      return new Case(
          changed,
          densityKgM3,
          viscosityPaS,
          liquidKgM3,
          fraction,
          peak,
          boreM,
          roughnessM,
          angleRad);
    }

    Case with(
        double density,
        double viscosity,
        double liquid,
        double sand,
        double burst,
        double bore,
        double roughness,
        double angle) {
      return new Case(sieves, density, viscosity, liquid, sand, burst, bore, roughness, angle);
    }

    Case denser(double f) {
      return with(
          densityKgM3 * f, viscosityPaS, liquidKgM3, fraction, peak, boreM, roughnessM, angleRad);
    }

    Case more(double f) {
      return with(
          densityKgM3, viscosityPaS, liquidKgM3, fraction * f, peak, boreM, roughnessM, angleRad);
    }

    Case burstier(double f) {
      return with(
          densityKgM3, viscosityPaS, liquidKgM3, fraction, peak * f, boreM, roughnessM, angleRad);
    }

    Case wider(double f) {
      return with(
          densityKgM3, viscosityPaS, liquidKgM3, fraction, peak, boreM * f, roughnessM, angleRad);
    }

    Case thicker(double f) {
      return with(
          densityKgM3, viscosityPaS * f, liquidKgM3, fraction, peak, boreM, roughnessM, angleRad);
    }

    Case heavierLiquid(double f) {
      return with(
          densityKgM3, viscosityPaS, liquidKgM3 * f, fraction, peak, boreM, roughnessM, angleRad);
    }

    Case rougher(double f) {
      return with(
          densityKgM3, viscosityPaS, liquidKgM3, fraction, peak, boreM, roughnessM * f, angleRad);
    }

    Case steeper(double f) {
      return with(
          densityKgM3, viscosityPaS, liquidKgM3, fraction, peak, boreM, roughnessM, angleRad * f);
    }
  }

  private static double between(SplittableRandom random, double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  /** Even sands, wide sands, sands with a gap and sands with a thin coarse tail. */
  private static List<SievePoint> sieves(SplittableRandom random) {
    double fine = between(random, 8e-5, 1e-3);
    double width = between(random, 1.05, 6);
    double coarse = fine * width * between(random, 1.01, 15);
    double tail = random.nextInt(3) == 0 ? between(random, 0.004, 0.14) : 0.02;
    return List.of(
        new SievePoint(fine, 0),
        new SievePoint(fine * Math.sqrt(width), 0.3 + 0.3 * random.nextDouble()),
        new SievePoint(fine * width, 1 - tail),
        new SievePoint(coarse, 1 - tail * (random.nextInt(2) == 0 ? 1 : 0.6)),
        new SievePoint(coarse * between(random, 1.1, 2), 1));
  }

  private static Case any(SplittableRandom random) {
    return new Case(
        sieves(random),
        2200 + 900 * random.nextDouble(),
        random.nextBoolean() ? between(random, 7e-4, 2e-3) : between(random, 7e-4, 0.05),
        990 + 60 * random.nextDouble(),
        between(random, 1e-6, 0.3),
        1 + 2 * random.nextDouble(),
        between(random, 0.03, 0.8),
        between(random, 1e-6, 1e-3),
        random.nextInt(3) > 0 ? 0 : (random.nextDouble() - 0.3) * 2);
  }

  @Test
  void nothingThatMakesSandHarderToCarryLowersWhatIsRequired() {
    SplittableRandom random = new SplittableRandom(20250611);
    for (int i = 0; i < CASES; i++) {
      Case base = any(random);
      double factor = between(random, 1.0005, 1.6);
      notBelow("coarser sand", base, base.coarser(factor));
      notBelow("more coarse sand", base, base.moreTail(Math.min(factor, 1.1)));
      notBelow("denser sand", base, base.denser(factor));
      notBelow("more sand", base, base.more(Math.min(factor, 0.39 / base.fraction())));
      notBelow("burstier sand", base, base.burstier(factor));
      notBelow("a wider bore", base, base.wider(factor));
    }
  }

  private static void notBelow(String what, Case base, Case worse) {
    DepositionJudgement before = base.judge(0);
    DepositionJudgement after = worse.judge(0);
    assertThat(after.limitMps())
        .as("%s: limit of %s", what, base)
        .isGreaterThanOrEqualTo(before.limitMps() * (1 - ROUNDING));
    assertThat(after.requiredMps())
        .as("%s: required of %s", what, base)
        .isGreaterThanOrEqualTo(before.requiredMps() * (1 - ROUNDING));
  }

  @Test
  void nothingJumps() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < CASES; i++) {
      Case base = any(random);
      for (Case next :
          List.of(
              base.coarser(STEP),
              base.moreTail(1.00001),
              base.denser(STEP),
              base.more(STEP),
              base.burstier(STEP),
              base.wider(STEP),
              base.thicker(STEP),
              base.heavierLiquid(STEP),
              base.rougher(STEP),
              base.steeper(STEP))) {
        DepositionJudgement before = base.judge(1);
        DepositionJudgement after = next.judge(1);
        near(base, before.limitMps(), after.limitMps());
        near(base, before.requiredMps(), after.requiredMps());
        near(base, before.slugMps(), after.slugMps());
      }
    }
  }

  private static void near(Case base, double before, double after) {
    assertThat(Math.abs(after / before - 1)).as("%s", base).isLessThan(LARGEST_JUMP);
  }

  /** Of a liquid whose viscosity falls with the shear rate too: the flow rate alone is changed. */
  @Test
  void lessFlowIsNeverBetter() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < CASES; i++) {
      Case base = any(random);
      double index = 0.3 + 0.7 * random.nextDouble();
      double velocity = between(random, 0.3, 6);
      double slower = velocity / between(random, 1.0005, 1.3);
      Case thicker = base.thicker(Math.pow(slower / velocity, index - 1));
      DepositionJudgement fast = base.judge(velocity);
      DepositionJudgement slow = thicker.judge(slower);
      assertThat(slow.outcome())
          .as("%s at %s m/s", base, velocity)
          .isLessThanOrEqualTo(fast.outcome());
      assertThat(slower / slow.requiredMps())
          .as("%s at %s m/s", base, velocity)
          .isLessThanOrEqualTo(velocity / fast.requiredMps() * (1 + ROUNDING));
    }
  }

  @Test
  void noNumberOfAJudgementIsOutOfBounds() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < CASES; i++) {
      Case base = any(random);
      double velocity = between(random, 0.01, 10);
      DepositionJudgement j = base.judge(velocity);
      assertThat(j.limitMps()).isFinite().isPositive();
      assertThat(j.requiredMps()).isGreaterThan(j.limitMps()).isFinite();
      assertThat(j.slugMps()).isGreaterThanOrEqualTo(j.limitMps() * (1 - ROUNDING));
      assertThat(j.velocityToPassMps()).isEqualTo(j.requiredMps());
      assertThat(base.judge(velocity * 1.3).outcome()).isGreaterThanOrEqualTo(j.outcome());
      assertThat(base.judge(j.velocityToPassMps()).outcome()).isEqualTo(Outcome.CLEAR);
    }
  }

  /** A tail is never judged milder than it would be alone at its own concentration. */
  @Test
  void aTailIsJudgedAtLeastAsHardAsAlone() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < CASES; i++) {
      Case base = any(random);
      Gradation sand = Gradation.of(base.sieves());
      for (double retained : new double[] {0.10, 0.05, 0.02, 0.01}) {
        double size = sand.sizePassingM(1 - retained);
        double own = retained * base.fraction();
        Slurry alone =
            new Slurry(
                new Liquid(base.liquidKgM3(), base.viscosityPaS()),
                base.densityKgM3(),
                GrainShape.NATURAL,
                size,
                size,
                own);
        double limit =
            DepositionRule.DEFAULT
                .judge(
                    SandLoad.even(alone),
                    new Bore(base.boreM(), base.roughnessM()),
                    1,
                    base.angleRad())
                .limitMps();
        assertThat(base.judge(1).limitMps())
            .as("%s retained of %s", retained, base)
            .isGreaterThanOrEqualTo(limit * (1 - ROUNDING));
      }
    }
  }
}
