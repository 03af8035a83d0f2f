package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.correlation.Physics;

class LaminarChannelTest {
  /**
   * Poiseuille number of a rectangular duct by the series of its velocity (White, Viscous Flow).
   */
  private static double series(double a) {
    double sum = 0;
    for (int n = 1; n < 2000; n += 2) {
      sum += Math.tanh(n * Math.PI / 2 / a) / Math.pow(n, 5);
    }
    double shape = 1 - 192 * a / Math.pow(Math.PI, 5) * sum;
    return 96 / (Math.pow(1 + a, 2) * shape);
  }

  @Property(tries = 200)
  void theFitIsTheSeriesOfTheClosedDuct(@ForAll @DoubleRange(min = 0.01, max = 1) double a) {
    LaminarChannel channel = new LaminarChannel(new OpenChannel(2, 0.001, 0.015), 1e-4);
    assertThat(channel.poiseuilleNumber(a)).isCloseTo(series(a), withinPercentage(0.1));
  }

  @Example
  void aSquareDuctHasTheTabledNumber() {
    // Shah and London (1978), also White, Viscous Fluid Flow, table of rectangular ducts: 56.91.
    LaminarChannel square = new LaminarChannel(new OpenChannel(1, 0.001, 0.015), 1e-4);
    assertThat(square.poiseuilleNumber(0.5)).isCloseTo(56.91, within(0.05));
  }

  /** A deep channel is the same duct on its side: 1 m by twice 2 m has a of 1/4. */
  @Example
  void aDeepChannelIsADuctOnItsSide() {
    LaminarChannel deep = new LaminarChannel(new OpenChannel(1, 0.001, 0.015), 1e-4);
    assertThat(deep.poiseuilleNumber(2)).isCloseTo(series(0.25), withinPercentage(0.1));
  }

  /** Chow (1959), Open-Channel Hydraulics: to 500 on the radius; from memory, unverified. */
  @Example
  void aChannelIsLaminarToFiveHundredOnItsHydraulicRadius() {
    assertThat(LaminarChannel.LAMINAR_BELOW).isEqualTo(4 * 500);
  }

  @Example
  void aWideChannelIsTheFallingFilm() {
    double viscosity = 2e-4;
    double slope = 0.002;
    LaminarChannel wide = new LaminarChannel(new OpenChannel(1000, slope, 0.015), viscosity);
    double flow = 1;
    double film = Math.cbrt(3 * viscosity * flow / 1000 / Physics.GRAVITY / slope);
    assertThat(wide.normalDepthM(flow)).isCloseTo(film, withinPercentage(0.1));
  }

  @Property(tries = 200)
  void atItsDepthTheStressOfTheFlowIsTheWeightAlongTheSlope(
      @ForAll @DoubleRange(min = 0.1, max = 10) double width,
      @ForAll @Scale(4) @DoubleRange(min = 1e-4, max = 0.05) double slope,
      @ForAll @Scale(6) @DoubleRange(min = 1e-6, max = 1e-2) double viscosity,
      @ForAll @Scale(4) @DoubleRange(min = 1e-4, max = 1) double flow) {
    OpenChannel channel = new OpenChannel(width, slope, 0.015);
    LaminarChannel laminar = new LaminarChannel(channel, viscosity);
    ChannelFlow uniform = channel.flow(flow, laminar.normalDepthM(flow));
    double friction = laminar.overManning(uniform) * uniform.darcyFrictionFactor();
    double stress = friction * Math.pow(uniform.velocityMps(), 2) / 8;
    assertThat(stress)
        .isCloseTo(Physics.GRAVITY * uniform.hydraulicRadiusM() * slope, withinPercentage(1e-6));
  }
}
