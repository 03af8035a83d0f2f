package sandslurry.material.sand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class GradationProperties {
  /** Sieve analyses in random order, some with grains beyond the sieves. */
  @Provide
  Arbitrary<List<SievePoint>> analyses() {
    Arbitrary<List<Double>> steps =
        Arbitraries.doubles().between(1.05, 4).ofScale(9).list().ofMinSize(2).ofMaxSize(9);
    return Combinators.combine(
            steps,
            Arbitraries.doubles().between(0, 0.4).ofScale(9),
            Arbitraries.doubles().between(0.86, 1).ofScale(9),
            Arbitraries.longs())
        .as(GradationProperties::analysis);
  }

  private static List<SievePoint> analysis(
      List<Double> steps, double first, double last, long seed) {
    Random random = new Random(seed);
    List<Double> passing = new ArrayList<>(List.of(first, last));
    for (int i = 1; i < steps.size(); i++) {
      passing.add(first + (last - first) * random.nextDouble());
    }
    Collections.sort(passing);
    List<SievePoint> points = new ArrayList<>();
    double size = 40e-6 * (1 + random.nextDouble());
    points.add(new SievePoint(size, passing.get(0)));
    for (int i = 0; i < steps.size(); i++) {
      size *= steps.get(i);
      points.add(new SievePoint(size, passing.get(i + 1)));
    }
    Collections.shuffle(points, random);
    return points;
  }

  @Property
  void massIsKept(@ForAll("analyses") List<SievePoint> points) {
    checkClasses(Gradation.of(points));
  }

  private static void checkClasses(Gradation sand) {
    List<SizeClass> classes = sand.classes();
    double sum = 0;
    double top = 0;
    for (SizeClass c : classes) {
      assertThat(c.massFraction()).isPositive();
      assertThat(c.lowM()).isGreaterThanOrEqualTo(top * (1 - 1e-12));
      assertThat(c.highM() / c.lowM()).isBetween(1.0, Math.sqrt(2) * (1 + 1e-8));
      assertThat(c.meanM()).isBetween(c.lowM() * (1 - 1e-12), c.highM() * (1 + 1e-12));
      sum += c.massFraction();
      top = c.highM();
      assertThat(sand.fractionPassing(top)).isEqualTo(sum, within(1e-9));
    }
    assertThat(sum).isEqualTo(1, within(1e-12));
  }

  @Property
  void theMeasuredPointsAreKept(@ForAll("analyses") List<SievePoint> points) {
    Gradation sand = Gradation.of(points);
    for (SievePoint point : points) {
      assertThat(sand.fractionPassing(point.sizeM()))
          .isEqualTo(point.fractionPassing(), within(1e-12));
    }
  }

  @Property
  void moreGrainsPassALargerSieve(
      @ForAll("analyses") List<SievePoint> points,
      @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 0.1) double sizeM,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 10) double step) {
    Gradation sand = Gradation.of(points);
    assertThat(sand.fractionPassing(sizeM * step))
        .isGreaterThanOrEqualTo(sand.fractionPassing(sizeM));
  }

  @Property
  void sizeAndFractionAreInverse(
      @ForAll("analyses") List<SievePoint> points,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double fraction) {
    Gradation sand = Gradation.of(points);
    assertThat(sand.fractionPassing(sand.sizePassingM(fraction))).isEqualTo(fraction, within(1e-9));
    assertThat(sand.d50M()).isLessThanOrEqualTo(sand.d85M());
  }

  @Property
  void takingTheFinesOutKeepsTheProportionsOfTheRest(
      @ForAll("analyses") List<SievePoint> points,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.8) double cut,
      @ForAll @Scale(9) @DoubleRange(min = 1e-5, max = 0.1) double sizeM) {
    Gradation sand = Gradation.of(points);
    double cutM = sand.sizePassingM(cut);
    double fines = sand.fractionPassing(cutM);
    Gradation coarse = sand.coarserThan(cutM);
    checkClasses(coarse);
    double expected = sizeM <= cutM ? 0 : (sand.fractionPassing(sizeM) - fines) / (1 - fines);
    assertThat(coarse.fractionPassing(sizeM)).isEqualTo(expected, within(1e-9));
  }

  @Property
  void twoSizesComeBack(
      @ForAll @Scale(9) @DoubleRange(min = 1e-5, max = 1e-2) double d50M,
      @ForAll @Scale(9) @DoubleRange(min = 1.001, max = 10) double ratio) {
    Gradation sand = Gradation.ofD50D85(d50M, d50M * ratio);
    assertThat(sand.d50M()).isEqualTo(d50M, within(1e-9 * d50M));
    assertThat(sand.d85M()).isEqualTo(d50M * ratio, within(1e-9 * d50M * ratio));
    checkClasses(sand);
  }
}
