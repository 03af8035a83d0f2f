package sandslurry.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** One unknown from one reading, on laws that can be solved by hand. */
class HypothesisProperties {
  private static final double STATIC = 2e4;

  /** Friction grows with the unknown and with the square of the flow rate. */
  private static final Hypothesis SQUARE =
      new Hypothesis((x, q) -> STATIC + 1e8 * x * q * q, 0.1, 1, 20, false);

  @Property(tries = 100)
  void theUnknownOfASquareLawIsThatByHand(
      @ForAll @DoubleRange(min = 0.5, max = 10) double truth,
      @ForAll @DoubleRange(min = 0.01, max = 0.1) double flow,
      @ForAll @DoubleRange(min = 0, max = 0.05) double byFlow,
      @ForAll @DoubleRange(min = 0, max = 0.03) double byPressure,
      @ForAll @DoubleRange(min = 0, max = 0.1) double model) {
    double friction = 1e8 * truth * flow * flow;
    SiteReading reading = new SiteReading(flow, STATIC + friction, byFlow, byPressure * friction);
    Bracket span = SQUARE.solve(reading, model, STATIC).orElseThrow();
    assertThat(span.value()).isCloseTo(truth, within(1e-9 * truth));
    // x f +- x f (2 u) (+) x f m (+) p: the ends solve |x - x0| = hypot(2 u x, m x, p x0).
    for (double end : new double[] {span.low(), span.high()}) {
      double by = Math.hypot(Math.hypot(2 * byFlow * end, model * end), byPressure * truth);
      assertThat(Math.abs(end - truth)).isCloseTo(by, within(1e-6 * truth));
    }
  }

  @Property(tries = 100)
  void moreUncertaintyNeverNarrowsTheSpan(
      @ForAll @DoubleRange(min = 0.5, max = 10) double truth,
      @ForAll @DoubleRange(min = 0, max = 0.1) double byFlow,
      @ForAll @DoubleRange(min = 1, max = 3) double more) {
    double pressure = STATIC + 1e8 * truth * 1e-4;
    Bracket narrow = SQUARE.solve(new SiteReading(0.01, pressure, byFlow, 100), 0.1, STATIC).get();
    Bracket wide =
        SQUARE.solve(new SiteReading(0.01, pressure, more * byFlow, 100 * more), 0.1, STATIC).get();
    assertThat(wide.low()).isLessThanOrEqualTo(narrow.low() + 1e-9);
    assertThat(wide.high()).isGreaterThanOrEqualTo(narrow.high() - 1e-9);
  }

  @Example
  void whatNoValueExplainsHasNone() {
    assertThat(SQUARE.solve(new SiteReading(0.01, 20 * STATIC, 0.01, 10), 0.01, STATIC)).isEmpty();
    assertThat(SQUARE.solve(new SiteReading(0.01, 0.5 * STATIC, 0.01, 10), 0.01, STATIC)).isEmpty();
  }

  @Example
  void aDipGivesBothValuesAndTakesTheOneNearTheCleanLine() {
    // 1000 (x - 1)^2: at 250 both 0.5 and 1.5 explain it; the clean line is at 0.
    Hypothesis dip = new Hypothesis((x, q) -> 1000 * (x - 1) * (x - 1), 0, 0, 3, true);
    Optional<Bracket> span = dip.solve(new SiteReading(1, 250, 0, 0), 0, 0);
    assertThat(span.orElseThrow().value()).isCloseTo(0.5, within(1e-9));
    assertThat(span.get().low()).isCloseTo(0.5, within(1e-9));
    assertThat(span.get().high()).isCloseTo(1.5, within(1e-9));
  }

  @Example
  void spansThatMeetAreNotApart() {
    assertThat(new Bracket(1, 2, 3).apartFrom(new Bracket(3, 4, 5))).isFalse();
    assertThat(new Bracket(1, 2, 3).apartFrom(new Bracket(3.1, 4, 5))).isTrue();
    assertThat(new Bracket(3.1, 4, 5).apartFrom(new Bracket(1, 2, 3))).isTrue();
    assertThat(new Bracket(1, 2, 3).widened(0.1).apartFrom(new Bracket(3.05, 4, 5))).isFalse();
  }
}
