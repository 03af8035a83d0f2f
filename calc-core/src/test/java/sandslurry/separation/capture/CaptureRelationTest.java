package sandslurry.separation.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CaptureRelationTest {
  private static final BasinFlow FLOW = new BasinFlow(0.01, 0.02);

  @Test
  void aGrainThatDoesNotFallIsNeverCaught() {
    for (CaptureRelation relation : CaptureRelations.FAMILY.all()) {
      assertThat(relation.fraction(FLOW, 0).value()).as(relation.name()).isZero();
    }
  }

  @Test
  void aGrainThatFallsLikeAStoneIsAlwaysCaught() {
    for (CaptureRelation relation : CaptureRelations.FAMILY.all()) {
      assertThat(relation.fraction(FLOW, 1e6).value()).as(relation.name()).isGreaterThan(0.9999);
      assertThat(relation.fraction(new BasinFlow(1e-300, 0), 1e300).value())
          .as(relation.name())
          .isEqualTo(1, within(1e-12));
    }
  }

  @Test
  void manyBasinsInARowAreVetterAndOneIsAMixedTank() {
    assertThat(new HazenBasins(1e9).fraction(FLOW, 0.013).value())
        .isEqualTo(CaptureRelations.MIXED.fraction(FLOW, 0.013).value(), within(1e-8));
    assertThat(new HazenBasins(1).fraction(FLOW, 0.01).value()).isEqualTo(0.5, within(1e-15));
    assertThat(HazenBasins.ofReciprocal(0.5).id()).isEqualTo(new HazenBasins(2).id());
  }

  @Test
  void everyRelationHasItsOwnKey() {
    assertThat(CaptureRelations.FAMILY.all().stream().map(CaptureRelation::id))
        .doesNotHaveDuplicates()
        .allMatch(id -> id.matches("[a-z0-9.-]+"));
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new BasinFlow(0, 0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new BasinFlow(0.1, -0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new BasinFlow(Double.NaN, 0.1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CaptureRelations.IDEAL.fraction(FLOW, -0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new HazenBasins(0));
    assertThatIllegalArgumentException().isThrownBy(() -> new CaptureBand(0.5, 0.6, 0.4));
  }
}
