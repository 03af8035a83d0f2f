package sandslurry.separation.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class CaptureRelationProperties {
  @Property
  void capturesLieInZeroToOneAndRiseWithSettlingVelocity(
      @ForAll @DoubleRange(min = -8, max = 2) double logOverflow,
      @ForAll @DoubleRange(min = -8, max = 1) double logShear,
      @ForAll @DoubleRange(min = -9, max = 2) double logFall) {
    BasinFlow flow = new BasinFlow(Math.pow(10, logOverflow), Math.pow(10, logShear));
    double fall = Math.pow(10, logFall);
    for (CaptureRelation relation : CaptureRelations.FAMILY.all()) {
      double caught = relation.fraction(flow, fall).value();
      assertThat(caught).as(relation.name()).isBetween(0.0, 1.0);
      assertThat(relation.fraction(flow, 1.02 * fall).value())
          .as(relation.name())
          .isGreaterThanOrEqualTo(caught - 1e-12);
    }
  }

  @Property
  void turbulenceNeverHelpsAndNeverMakesItWorseThanMixed(
      @ForAll @DoubleRange(min = -6, max = 1.5) double logT,
      @ForAll @DoubleRange(min = -6, max = 9) double logK) {
    double t = Math.pow(10, logT);
    double k = Math.pow(10, logK);
    double caught = CampDobbins1946.fraction(t, k);
    assertThat(caught).isBetween(-Math.expm1(-t), Math.min(1, t));
    assertThat(CampDobbins1946.fraction(t, 1.05 * k)).isGreaterThanOrEqualTo(caught - 1e-12);
  }

  @Property
  void theSolutionHasNoSeamWhereItChangesItsPath(
      @ForAll @DoubleRange(min = 0.01, max = 30) double t,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double k) {
    // The slope of the share against T is the concentration at the floor, 0 to 1.
    double step = 1e-7;
    double rise = CampDobbins1946.fraction(t + step, k) - CampDobbins1946.fraction(t, k);
    assertThat(rise).isBetween(-1e-11, step + 1e-11);
    double acrossOne = CampDobbins1946.fraction(1 + step, k) - CampDobbins1946.fraction(1, k);
    assertThat(acrossOne).isBetween(0.0, step + 1e-11);
    double seam = 8 / t;
    assertThat(CampDobbins1946.fraction(t, seam * (1 + 1e-9)))
        .isBetween(
            CampDobbins1946.fraction(t, seam * (1 - 1e-9)) - 1e-11,
            CampDobbins1946.fraction(t, seam * (1 - 1e-9)) + 1e-8);
  }

  @Property(tries = 100)
  void whatFallsAtTheVelocityOfAShareIsCaughtByThatShare(
      @ForAll @DoubleRange(min = 0.02, max = 0.98) double share,
      @ForAll @DoubleRange(min = -12, max = 14) double logRatio) {
    BasinFlow flow = new BasinFlow(0.15 * Math.exp(logRatio), 1);
    double velocity = Outlook.LIKELY.velocityCaughtMps(flow, share);
    assertThat(Outlook.LIKELY.caught(flow, velocity)).isCloseTo(share, within(2e-5));
  }
}
