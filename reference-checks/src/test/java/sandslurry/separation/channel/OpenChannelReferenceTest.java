package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.units.Measure;

class OpenChannelReferenceTest {
  private static double si(double feet) {
    return Measure.LENGTH.entry("ft").toSi(feet);
  }

  /** Depth at which a channel of unit width has a given hydraulic radius below 1/2 m. */
  private static double depthOfRadius(double radiusM) {
    return radiusM / (1 - 2 * radiusM);
  }

  @Test
  void manningsVelocityIsThatOfAGeneralPurposeLibrary() {
    // CalebBell/fluids 1.3.1, docstring of fluids.open_flow.V_Manning: R = 0.2859 m, S = 0.005236,
    // n = 0.03 gives 1.0467781958118971 m/s, the example of Cengel and Cimbala, Fluid Mechanics
    // (2006). All digits.
    ours(new OpenChannel(1, 0.005236, 0.03).uniformVelocityMps(depthOfRadius(0.2859)))
        .isCloseTo(1.0467781958118971, within(1e-13));
  }

  @Test
  void frictionAndVelocityFollowChezysCoefficient() {
    // CalebBell/fluids 1.3.1, docstrings of n_Manning_to_C_Chezy (n = 0.05, R = 5 m: C =
    // 26.15320972023661) and V_Chezy (R = 5 m, S = 0.001, C = 26.153: 1.8492963648371776 m/s).
    OpenChannel river = new OpenChannel(100, 0.001, 0.05);
    double depth = 5 * 100 / (100.0 - 2 * 5);
    ours(river.uniformVelocityMps(depth)).isCloseTo(1.8492963648371776, within(2e-5));
    // C = sqrt(8 g / f): 6 digits are asked because the library does not state its g.
    ours(Math.sqrt(8 * 9.80665 / river.flow(100, depth).darcyFrictionFactor()))
        .isCloseTo(26.15320972023661, within(1e-10));
  }

  @ParameterizedTest
  @CsvSource({
    // San Diego State University, CIVE 530, keys of two midterms (facets.sdsu.edu,
    // jon.sdsu.edu): b, S, n, y; R, v, Q. Half a unit of the last digit, R rounded on the way.
    "6, 0.0025, 0.015, 1.6, 1.043, 3.428, 32.91",
    "5, 0.0025, 0.015, 0.8, 0.606, 2.387, 9.548",
  })
  void examinationKeysAreReproduced(
      double width, double slope, double n, double depth, double radius, double v, double q) {
    OpenChannel channel = new OpenChannel(width, slope, n);
    ours(channel.hydraulicRadiusM(depth)).isCloseTo(radius, within(0.0006));
    ours(channel.uniformVelocityMps(depth)).isCloseTo(v, within(0.0015));
    ours(channel.uniformVelocityMps(depth) * width * depth).isCloseTo(q, withinPercentage(0.05));
    ours(channel.normalDepthM(q)).isCloseTo(depth, withinPercentage(0.05));
  }

  @Test
  void normalDepthIsThatOfAPackageForGraduallyVariedFlow() {
    // R package rivr, help page of normal_depth: S 0.001, n 0.045, Q 250 ft3/s, B 100 ft, vertical
    // sides: 1.711301 ft with the factor 1.486, which is 1.48592 rounded up (0.004 % of depth).
    double flow = Measure.FLOW.entry("ft3/s").toSi(250);
    ours(new OpenChannel(si(100), 0.001, 0.045).normalDepthM(flow))
        .isCloseTo(si(1.711301), withinPercentage(0.01));
  }

  @Test
  void dischargeAndCriticalDepthOfASteepChannelAreReproduced() {
    // Examination question of Indian engineering services (edurev.in, question 1408436): 10 m
    // wide, S = 3.33e-3, n = 0.015 (printed once as 0.15 but worked as 0.015), y = 3 m: Q = 175.58
    // m3/s, critical depth 3.16 m. Critical means Froude number 1; y rounded to 0.2 % is Fr to 0.3
    // %.
    OpenChannel channel = new OpenChannel(10, 3.33e-3, 0.015);
    double flow = channel.uniformVelocityMps(3) * 30;
    ours(flow).isCloseTo(175.58, withinPercentage(0.1));
    ours(channel.flow(flow, 3.16).froudeNumber()).isCloseTo(1, within(0.005));
    assertThat(new ChannelFlow(channel, flow, channel.normalDepthM(flow)).froudeNumber())
        .isGreaterThan(1);
  }

  @Test
  void shearVelocityOfASettlingBasinInATextbookIsReproduced() {
    // Irrigation and Water Resources Engineering, p. 472, example 13.3 (read at
    // fliphtml5.com/lnym):
    // Q 1.41 m3/s, 12 m wide, 3 m deep, n 0.014: U = 0.039 m/s, u* = 1.424e-3 m/s and w/u* = 1.4
    // for w = 2e-3 m/s. The book takes the depth for the hydraulic radius, as in a very wide
    // channel; U was rounded to 0.039.
    ChannelFlow wide = new OpenChannel(1e7, 0, 0.014).flow(0.039 * 3e7, 3);
    ours(wide.shearVelocityMps()).isCloseTo(1.424e-3, withinPercentage(0.1));
    ChannelFlow basin = new OpenChannel(12, 0, 0.014).flow(1.41, 3);
    ours(basin.velocityMps()).isCloseTo(0.039, within(0.0005));
    ours(2e-3 / basin.shearVelocityMps()).isCloseTo(1.4, within(0.1));
  }

  @Test
  void shearVelocityOfARiverIntakeBasinIsReproduced() {
    // Design sheet "Settling basin design (using Camp's method)" of a hydropower rehabilitation
    // (scribd.com/document/462276628): Q 12.38 m3/s, cross-section 75.35 m2, R 3.21 m, M = 1/n =
    // 67; V = 0.16 m/s, v* = 0.0063 m/s from w/v* = 10.596 at w = 0.067 m/s. A rectangle 100 m wide
    // of the same radius and velocity stands for the hopper section. Tolerance: R was printed to
    // 0.2 %.
    double depth = 3.21 * 100 / (100 - 2 * 3.21);
    ChannelFlow basin = new OpenChannel(100, 0, 1 / 67.0).flow(12.38 / 75.35 * 100 * depth, depth);
    ours(basin.velocityMps()).isCloseTo(0.16, within(0.005));
    ours(basin.shearVelocityMps()).isCloseTo(0.067 / 10.596, withinPercentage(0.3));
  }

  @Test
  void anAlleyAtThePublishedSlopeFlushesAtThePublishedVelocity() {
    // University of Missouri Extension WQ313 and WQ314: 5 ft/s, 3 in deep, on a slope of 3 % by
    // Manning's formula with n = 0.02 and R = W D / (W + 2 D). A width of 12 ft is assumed (feed
    // alleys are 12 to 16 ft). The slope is printed to one digit: 1 % of velocity.
    OpenChannel alley = new OpenChannel(si(12), 0.03, 0.02);
    ours(alley.uniformVelocityMps(si(0.25))).isCloseTo(si(5), withinPercentage(1));
  }
}
