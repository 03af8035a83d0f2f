package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import sandslurry.separation.channel.PartFullPipe.PartFullFlow;
import sandslurry.units.Measure;

/** Gravity pipes against a public package, textbooks and the practice of sewers. */
class PartFullPipeReferenceTest {
  private static final double FOOT = Measure.LENGTH.entry("ft").toSi(1);

  /**
   * Source: R package iemisc, vignette Manning_iemiscdata_Examples (2024-06-05, read), problem
   * 14.12 of Mott, Applied Fluid Mechanics: 6 ft storm drain half full, 1/500, n 0.024: Q 51.29267
   * ft3/s, V 3.628214 ft/s, A 14.13717 ft2, P 9.424778 ft, R 1.5 ft, Fr 0.416711. Tolerance:
   * printed digits; Fr 0.1 %, for the package has another g.
   */
  @Test
  void aStormDrainHalfFull() {
    PartFullPipe pipe = new PartFullPipe(6 * FOOT, 1.0 / 500, 0.024);
    PartFullFlow flow = pipe.atDepth(0.5);
    double cubicFoot = FOOT * FOOT * FOOT;
    ours(flow.flowM3ps() / cubicFoot).isCloseTo(51.29267, within(2e-5));
    ours(flow.velocityMps() / FOOT).isCloseTo(3.628214, within(2e-6));
    ours(flow.wetted().areaM2() / (FOOT * FOOT)).isCloseTo(14.13717, within(5e-6));
    ours(flow.wetted().wettedPerimeterM() / FOOT).isCloseTo(9.424778, within(5e-7));
    ours(flow.hydraulicRadiusM() / FOOT).isCloseTo(1.5, within(1e-12));
    ours(pipe.depthShare(51.29267 * cubicFoot).orElseThrow()).isCloseTo(0.5, within(1e-6));
  }

  /**
   * Source: encyclopedic article on flow in partially full conduits (grokipedia.com, read) and any
   * textbook: greatest velocity at about 81 % of the depth, 1.14 times that of the full pipe;
   * greatest flow at about 94 %. The 1.076 of the flow: from memory, unverified. Tolerance: printed
   * digits.
   */
  @Test
  void theFullestPipeIsNotTheFullPipe() {
    PartFullPipe pipe = new PartFullPipe(0.3, 0.01, 0.013);
    double fastest = 0;
    double at = 0;
    for (int i = 1; i <= 1000; i++) {
      double velocity = pipe.atDepth(i / 1000.0).velocityMps();
      if (velocity > fastest) {
        fastest = velocity;
        at = i / 1000.0;
      }
    }
    ours(at).isCloseTo(0.81, within(0.005));
    ours(fastest / pipe.atDepth(1).velocityMps()).isCloseTo(1.14, within(0.005));
    ours(pipe.greatestFlowM3ps() / pipe.atDepth(1).flowM3ps()).isCloseTo(1.076, within(0.0005));
    ours(pipe.depthShare(pipe.greatestFlowM3ps() * (1 - 1e-12)).orElseThrow())
        .isCloseTo(0.94, within(0.005));
  }

  /**
   * Source: engineering note "When Tractive Stress Design Breaks Down" on a blog, read, after ASCE
   * Manual of Practice 60: sewers are designed for sand of 1 mm, 0.867 N/m2 or 0.0181 lb/ft2, which
   * goes with a velocity "on the order of" 0.6 m/s. Tolerance: printed digits; the velocity a
   * third.
   */
  @Test
  void theTractiveStressOfSewers() {
    double needed = new Merritt2009().neededStressPa(1e-3).value();
    ours(needed).isCloseTo(0.867, within(0.0005));
    double perSquareInch = 0.0181 / 144;
    ours(Measure.PRESSURE.entry("psi").toSi(perSquareInch)).isCloseTo(needed, within(0.0025));
    double radius = new PartFullPipe(0.4, 1, 0.013).atDepth(0.5).hydraulicRadiusM();
    double slope = needed / (1000 * 9.80665 * radius);
    double velocity = new PartFullPipe(0.4, slope, 0.013).atDepth(0.5).velocityMps();
    ours(velocity).isCloseTo(0.6, within(0.2));
  }
}
