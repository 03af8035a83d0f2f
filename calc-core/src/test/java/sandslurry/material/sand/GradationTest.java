package sandslurry.material.sand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class GradationTest {
  private static final List<SievePoint> SIEVES =
      List.of(
          new SievePoint(1e-3, 1),
          new SievePoint(0.25e-3, 0.2),
          new SievePoint(0.5e-3, 0.6),
          new SievePoint(0.125e-3, 0));

  @Test
  void interpolatesInTheLogarithmOfTheSize() {
    Gradation sand = Gradation.of(SIEVES);
    assertThat(sand.fractionPassing(0.25e-3 * Math.sqrt(2))).isEqualTo(0.4, within(1e-12));
    assertThat(sand.d50M()).isEqualTo(0.25e-3 * Math.pow(2, 0.75), within(1e-15));
    assertThat(sand.sizePassingM(0.6)).isEqualTo(0.5e-3);
    assertThat(sand.sizePassingM(0)).isEqualTo(0.125e-3);
    assertThat(sand.sizePassingM(1)).isEqualTo(1e-3);
    assertThat(sand.fractionPassing(1e-6)).isZero();
    assertThat(sand.fractionPassing(1)).isEqualTo(1);
    assertThat(sand.notes()).isEmpty();
  }

  @Test
  void losesNoGrainBeyondTheSieves() {
    Gradation sand =
        Gradation.of(List.of(new SievePoint(0.15e-3, 0.1), new SievePoint(1.2e-3, 0.9)));
    List<SizeClass> classes = sand.classes();
    assertThat(classes.get(0).lowM()).isEqualTo(0.075e-3, within(1e-15));
    assertThat(classes.get(classes.size() - 1).highM()).isEqualTo(2.4e-3, within(1e-15));
    assertThat(classes.stream().mapToDouble(SizeClass::massFraction).sum())
        .isEqualTo(1, within(1e-12));
    assertThat(sand.notes())
        .containsExactly(
            "10.0 % of the sand passes the smallest sieve; it is taken to lie between 0.0750 mm"
                + " and 0.150 mm.",
            "10.0 % of the sand stays on the largest sieve; it is taken to lie between 1.20 mm and"
                + " 2.40 mm.");
  }

  @Test
  void tellsAllThatIsWrongAtOnce() {
    List<SievePoint> bad =
        List.of(
            new SievePoint(0.6e-3, 0.4),
            new SievePoint(0.3e-3, 0.5),
            new SievePoint(0.3e-3, 0.6),
            new SievePoint(1.2e-3, 0.8));
    assertThat(Gradation.problems(bad))
        .containsExactly(
            "the sieve of 0.300 mm is given twice",
            "more passes the sieve of 0.300 mm (60.0 %) than the larger one of 0.600 mm (40.0 %)",
            "only 80.0 % passes the largest sieve of 1.20 mm: a coarser sieve is needed that at"
                + " least 85 % passes");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Gradation.of(bad))
        .withMessage(String.join("; ", Gradation.problems(bad)));
  }

  @Test
  void namesTheLineThatIsNoSieve() {
    assertThat(
            Gradation.problems(
                List.of(
                    new SievePoint(Double.NaN, 0.4),
                    new SievePoint(0.3e-3, 40),
                    new SievePoint(-1, Double.NaN))))
        .containsExactly(
            "line 1: a sieve needs a positive size",
            "line 2: the part that passes must lie in 0 % to 100 %",
            "line 3: a sieve needs a positive size",
            "line 3: the part that passes must lie in 0 % to 100 %");
    assertThat(Gradation.problems(List.of(new SievePoint(1e-3, 1))))
        .containsExactly("a sieve analysis needs two sieves or more but has 1");
    assertThat(Gradation.problems(List.of(new SievePoint(1e-3, 0.7), new SievePoint(2e-3, 1))))
        .singleElement()
        .asString()
        .contains("a finer sieve is needed");
    assertThat(Gradation.problems(SIEVES)).isEmpty();
  }

  @Test
  void aSandOfOneSizeIsOneClass() {
    Gradation sand = Gradation.ofD50D85(0.4e-3, 0.4e-3);
    assertThat(sand.classes())
        .containsExactly(new SizeClass(0.4e-3, 0.4e-3, Math.sqrt(0.4e-3 * 0.4e-3), 1));
    assertThat(sand.d50M()).isEqualTo(0.4e-3);
    assertThat(sand.d85M()).isEqualTo(0.4e-3);
    assertThat(sand.fractionPassing(0.39e-3)).isZero();
    assertThat(sand.fractionPassing(0.4e-3)).isEqualTo(1);
    assertThat(sand.coarserThan(75e-6).d50M()).isEqualTo(0.4e-3);
    assertThatIllegalArgumentException().isThrownBy(() -> sand.coarserThan(0.4e-3));
  }

  @Test
  void aSandOfTwoSizesIsLogNormal() {
    Gradation sand = Gradation.ofD50D85(0.4e-3, 0.8e-3);
    assertThat(sand.d50M()).isEqualTo(0.4e-3, within(1e-15));
    assertThat(sand.d85M()).isEqualTo(0.8e-3, within(1e-15));
    assertThat(sand.sizePassingM(0.15)).isEqualTo(0.2e-3, within(1e-6));
    assertThat(sand.notes()).anyMatch(note -> note.contains("log-normal"));
    assertThatIllegalArgumentException().isThrownBy(() -> Gradation.ofD50D85(0.4e-3, 0.3e-3));
    assertThatIllegalArgumentException().isThrownBy(() -> Gradation.ofD50D85(Double.NaN, 1));
  }

  @Test
  void aGapIsNotFilled() {
    Gradation sand =
        Gradation.of(
            List.of(
                new SievePoint(0.1e-3, 0),
                new SievePoint(0.2e-3, 0.5),
                new SievePoint(0.8e-3, 0.5),
                new SievePoint(1.6e-3, 1)));
    assertThat(sand.d50M()).isEqualTo(0.2e-3, within(1e-15));
    assertThat(sand.classes()).noneMatch(c -> c.meanM() > 0.2e-3 && c.meanM() < 0.8e-3);
    assertThat(sand.coarserThan(0.4e-3).sizePassingM(0)).isEqualTo(0.8e-3, within(1e-15));
  }

  @Test
  void sievesThatCatchNothingAreHarmless() {
    Gradation sand =
        Gradation.of(
            List.of(
                new SievePoint(0.05e-3, 0),
                new SievePoint(0.1e-3, 0),
                new SievePoint(0.2e-3, 0.5),
                new SievePoint(0.4e-3, 1),
                new SievePoint(0.8e-3, 1)));
    assertThat(sand.sizePassingM(0)).isEqualTo(0.1e-3);
    assertThat(sand.sizePassingM(1)).isEqualTo(0.4e-3);
  }

  @Test
  void everyStandardSandLiesWithinItsLimits() {
    for (StandardSand standard : StandardSand.values()) {
      Gradation sand = standard.middle();
      for (StandardSand.Limit limit : standard.limits()) {
        assertThat(sand.fractionPassing(limit.sizeM()))
            .isBetween(limit.least() - 1e-12, limit.most() + 1e-12);
      }
      assertThat(standard.label()).contains("ASTM");
      assertThat(standard.citation().where()).contains("read");
    }
  }
}
