package sandslurry.pump.derating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.correlation.Estimate;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;

class SolidsDeratingProperties {
  private static final OptionalDouble IMPELLER = OptionalDouble.of(0.3);

  private static Slurry slurry(double sizeM, double volumeFraction) {
    Liquid water = new Liquid(998.2, 1.0016e-3);
    return new Slurry(water, 2650, GrainShape.NATURAL, sizeM, sizeM, volumeFraction);
  }

  @Property
  void withoutSandBothRatiosAreExactlyOne(
      @ForAll @DoubleRange(min = 1e-6, max = 1e-2) @Scale(8) double size,
      @ForAll @DoubleRange(min = 0.05, max = 2) @Scale(8) double impeller) {
    for (SolidsDerating model : SolidsDeratings.FAMILY.all()) {
      Slurry clear = slurry(size, 0);
      assertThat(model.headRatio(clear, OptionalDouble.of(impeller)).value()).isEqualTo(1.0);
      assertThat(model.efficiencyRatio(clear, OptionalDouble.of(impeller)).value()).isEqualTo(1.0);
    }
    assertThat(SolidsDeratings.governing(slurry(size, 0), IMPELLER).headRatio().value())
        .isEqualTo(1.0);
  }

  @Example
  void onlyEnginAndGurAskForTheImpeller() {
    assertThat(SolidsDeratings.FAMILY.all())
        .filteredOn(SolidsDerating::needsImpellerDiameter)
        .extracting(SolidsDerating::id)
        .containsExactly("engin-gur-2003");
  }

  @Example
  void byCaveTheEfficiencyFallsAsTheHeadDoes() {
    SolidsDerating cave = SolidsDeratings.FAMILY.find("cave-1976").orElseThrow();
    Slurry sand = slurry(5e-4, 0.1);
    assertThat(cave.efficiencyRatio(sand, IMPELLER).value())
        .isLessThan(1)
        .isEqualTo(cave.headRatio(sand, IMPELLER).value());
  }

  @Property
  void moreSandTakesMoreHead(
      @ForAll @DoubleRange(min = 5e-5, max = 5e-3) @Scale(8) double size,
      @ForAll @DoubleRange(min = 0.001, max = 0.3) @Scale(8) double fraction) {
    for (SolidsDerating model : SolidsDeratings.FAMILY.all()) {
      double less = model.headRatio(slurry(size, fraction), IMPELLER).value();
      double more = model.headRatio(slurry(size, fraction * 1.1), IMPELLER).value();
      assertThat(less).as(model.id()).isLessThan(1).isGreaterThan(0);
      assertThat(more).as(model.id()).isLessThan(less);
    }
  }

  @Property
  void coarserSandTakesMoreHead(
      @ForAll @DoubleRange(min = 5e-5, max = 2e-3) @Scale(8) double size,
      @ForAll @DoubleRange(min = 0.01, max = 0.3) @Scale(8) double fraction) {
    for (SolidsDerating model : SolidsDeratings.FAMILY.all()) {
      double fine = model.headRatio(slurry(size, fraction), IMPELLER).value();
      double coarse = model.headRatio(slurry(size * 1.2, fraction), IMPELLER).value();
      assertThat(coarse).as(model.id()).isLessThan(fine);
    }
  }

  @Property
  void noSizeHoweverFineGivesMoreHeadThanClearLiquid(
      @ForAll @DoubleRange(min = 1e-7, max = 1e-2) @Scale(8) double size,
      @ForAll @DoubleRange(min = 0, max = 0.4) @Scale(8) double fraction) {
    for (SolidsDerating model : SolidsDeratings.FAMILY.all()) {
      assertThat(model.headRatio(slurry(size, fraction), IMPELLER).value())
          .as(model.id())
          .isLessThanOrEqualTo(1);
    }
  }

  @Property
  void theGoverningDeratingIsTheWorseOfCaveAndEnginGur(
      @ForAll @DoubleRange(min = 5e-5, max = 5e-3) @Scale(8) double size,
      @ForAll @DoubleRange(min = 0, max = 0.3) @Scale(8) double fraction,
      @ForAll @DoubleRange(min = 0.1, max = 1.5) @Scale(8) double impeller) {
    Slurry slurry = slurry(size, fraction);
    OptionalDouble known = OptionalDouble.of(impeller);
    double cave = new Cave1976().headRatio(slurry, OptionalDouble.empty()).value();
    double enginGur = new EnginGur2003().headRatio(slurry, known).value();
    assertThat(SolidsDeratings.governing(slurry, known).headRatio().value())
        .isEqualTo(Math.min(cave, enginGur));
    SolidsDeratings.Derating unknown = SolidsDeratings.governing(slurry, OptionalDouble.empty());
    assertThat(unknown.model()).isInstanceOf(Cave1976.class);
    assertThat(unknown.headRatio().value()).isEqualTo(cave);
  }

  @Property
  void aLargerImpellerLosesLessByEnginAndGur(
      @ForAll @DoubleRange(min = 0.1, max = 0.8) @Scale(8) double impeller) {
    Slurry slurry = slurry(5e-4, 0.1);
    SolidsDerating model = new EnginGur2003();
    assertThat(model.headRatio(slurry, OptionalDouble.of(impeller * 1.1)).value())
        .isGreaterThan(model.headRatio(slurry, OptionalDouble.of(impeller)).value());
  }

  @Example
  void whatLiesOutsideThePublishedRangeIsReported() {
    Estimate fine = new Cave1976().headRatio(slurry(1e-5, 0.1), OptionalDouble.empty());
    assertThat(fine.value()).isEqualTo(1);
    assertThat(fine.inRange()).isFalse();
    Estimate dense = new Cave1976().efficiencyRatio(slurry(3e-4, 0.2), OptionalDouble.empty());
    assertThat(dense.excesses()).hasSize(1);
    Estimate large = new EnginGur2003().headRatio(slurry(3e-4, 0.1), OptionalDouble.of(0.9));
    assertThat(large.excesses()).hasSize(1);
    assertThat(new Cave1976().headRatio(slurry(3e-4, 0.05), IMPELLER).inRange()).isTrue();
  }

  @Example
  void enginAndGurRefuseToWorkWithoutAnImpeller() {
    SolidsDerating model = new EnginGur2003();
    assertThat(model.needsImpellerDiameter()).isTrue();
    assertThatThrownBy(() -> model.headRatio(slurry(3e-4, 0.1), OptionalDouble.empty()))
        .hasMessageContaining("impeller");
    assertThatThrownBy(() -> model.headRatio(slurry(3e-4, 0.1), OptionalDouble.of(0)))
        .hasMessageContaining("0.0 m");
  }

  @Example
  void everyMemberTellsWhatItIs() {
    assertThat(SolidsDeratings.FAMILY.all()).extracting(SolidsDerating::id).doesNotHaveDuplicates();
    for (SolidsDerating model : SolidsDeratings.FAMILY.all()) {
      assertThat(model.about().equation()).matches("HR(_[A-Z]+)? = 1 - .*");
      assertThat(model.citation().year()).isBetween(1970, 2010);
    }
  }

  /**
   * Put in by hand: S = 2.65, Cw = 0.2, d50 = 0.3 mm, D = 0.3 m. Guards against slips of the pen.
   */
  @Example
  void theFormulasGiveWhatTheyGiveByHand() {
    double fraction = 0.2 / 2.65 / (0.2 / 2.65 + 0.8);
    Slurry slurry =
        new Slurry(new Liquid(1000, 1e-3), 2650, GrainShape.NATURAL, 3e-4, 3e-4, fraction);
    // 0.0385 * 1.65 * 2.50943 * 0.2 * ln(13.2159) = 0.0318824 * 2.581418
    assertThat(new Cave1976().headRatio(slurry, IMPELLER).value())
        .isCloseTo(1 - 0.0823017, within(1e-6));
    // 2.705 * 0.2 * 1.65^0.64 * 0.001^0.313 = 0.541 * 1.377811 * 0.115080
    assertThat(new EnginGur2003().headRatio(slurry, IMPELLER).value())
        .isCloseTo(1 - 0.0857802, within(1e-6));
    // 0.00056 * 1.65^0.72 * 2.13208 * 20 * ln(15) = 0.0238793 * 1.43413 * 2.70805
    assertThat(new Gahlot1992().headRatio(slurry, IMPELLER).value())
        .isCloseTo(1 - 0.0927397, within(1e-6));
  }
}
