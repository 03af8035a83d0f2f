package sandslurry.separation.box;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;

/** A dilution box with numbers worked by hand. */
class BoxByHandTest {
  private static final double SIZE = 0.2e-3;

  /** 0.04 kg/s of one grain in liquor of 2 % solids, half of them fines, without fibre. */
  private static UnitFeed feed(double liquidM3ps) {
    return feed(liquidM3ps, 0.04);
  }

  private static UnitFeed feed(double liquidM3ps, double sandKgps) {
    return new UnitFeed(
        liquidM3ps,
        new Liquid(1000, 1e-3),
        0.01,
        0.01,
        0,
        2650,
        GrainShape.NATURAL,
        List.of(new GrainRange(SIZE, SIZE)),
        List.of(sandKgps),
        1,
        0);
  }

  private static DilutionBox box(double area, double rinse) {
    return new DilutionBox(area, 1.5, 0.8, 0.2, rinse, 0.5, OptionalDouble.empty(), 0.4);
  }

  /** Stirred y/(1 + y), three basins 1 - (1 + y/3)^-3, ideal y, of the fall y over the flow. */
  @Test
  void theOutlooksAreOneAndThreeBasinsAndTheIdealOne() {
    BoxResult result = box(2, 0).evaluate(feed(0.05), OrganicMatter.FEEDLOT);
    double y = result.velocitiesMps().get(0) / result.overflowVelocityMps();
    assertThat(y).isBetween(0.5, 0.9);
    assertThat(caught(result, Outlook.CAUTIOUS)).isCloseTo(y / (1 + y), within(1e-12));
    double third = 1 + y / 3;
    assertThat(caught(result, Outlook.LIKELY))
        .isCloseTo(1 - 1 / (third * third * third), within(1e-12));
    assertThat(caught(result, Outlook.HOPEFUL)).isCloseTo(y, within(1e-12));
  }

  private static double caught(BoxResult result, Outlook outlook) {
    return result.sand(outlook).partition().sand().get(0);
  }

  /**
   * 20 % of moisture are 0.25 kg of liquor a kg of sand, two pore volumes of 0.04 kg/s 0.02 L/s.
   * With the 30 L/s of liquor and the sand's 0.0151 L/s they rise over 0.8 of 2 m2 at 18.772 mm/s
   * and stay 3 m3 long.
   */
  @Test
  void rinseIsCountedInPoreVolumesOfAllTheSand() {
    DilutionBox box = box(2, 2);
    UnitFeed feed = feed(0.03);
    assertThat(box.rinseM3ps(feed)).isCloseTo(2e-5, within(1e-15));
    BoxResult result = box.evaluate(feed, OrganicMatter.FEEDLOT);
    assertThat(result.overflowVelocityMps()).isCloseTo(0.018771934, within(1e-9));
    assertThat(result.residenceTimeS()).isCloseTo(99.88316, within(1e-4));
    assertThat(box.rinsedWith(feed, 5e-6).rinsePoreVolumes()).isCloseTo(0.5, within(1e-12));
    assertThat(box.rinsedWith(feed, 3e-5).rinsePoreVolumes()).isEqualTo(2);
    assertThat(box.rinsedWith(feed, -1).rinsePoreVolumes()).isZero();
  }

  /**
   * Two pore volumes leave a quarter of the 2 %: 0.5 % in the liquor with the sand, of which 0.04 ·
   * 0.2/(1 - 0.005 - 0.2) = 0.01006289 kg/s leave. That is 5.0314e-5 kg/s of dry matter in
   * 0.0400503 kg/s.
   */
  @Test
  void rinseLeavesAShareOfTheLiquorMatter() {
    BoxSand sand = box(1000, 2).evaluate(feed(0.03), OrganicMatter.FEEDLOT).sand(Outlook.HOPEFUL);
    assertThat(sand.sandKgps()).isCloseTo(0.04, within(1e-12));
    assertThat(sand.moisture()).isCloseTo(0.2, within(1e-12));
    assertThat(sand.foreignMatter()).isCloseTo(0.00125628, within(1e-8));
    // Of the water, 30 + 0.02 - 0.6 kg/s.
    assertThat(sand.partition().water()).isCloseTo(0.01006289 * 0.995 / 29.42, within(1e-9));
    assertThat(sand.partition().fines()).isCloseTo(0.01006289 / 30 / 4, within(1e-10));
  }

  @Test
  void withoutSandNothingLeavesWithIt() {
    BoxSand none = box(2, 2).evaluate(feed(0.03, 0), OrganicMatter.FEEDLOT).sand(Outlook.HOPEFUL);
    assertThat(none.sandKgps()).isZero();
    assertThat(none.moisture()).isZero();
    assertThat(none.foreignMatter()).isZero();
  }
}
