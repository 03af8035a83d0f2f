package sandslurry.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class CircularSegmentProperties {
  @Property
  void theSegmentOfAShareHasThatShare(
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(8) double share,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(8) double diameter) {
    CircularSegment segment = CircularSegment.ofAreaShare(diameter, share);
    double bore = new Bore(diameter, 0).areaM2();
    assertThat(segment.areaM2() / bore).isCloseTo(share, within(1e-10));
  }

  @Property
  void belowAndAboveMakeTheWhole(@ForAll @DoubleRange(min = 0, max = 1) @Scale(8) double depth) {
    CircularSegment below = new CircularSegment(0.2, depth);
    CircularSegment above = new CircularSegment(0.2, 1 - depth);
    assertThat(below.areaM2() + above.areaM2()).isCloseTo(new Bore(0.2, 0).areaM2(), within(1e-12));
    assertThat(below.wettedPerimeterM() + above.wettedPerimeterM())
        .isCloseTo(Math.PI * 0.2, within(1e-9));
    assertThat(below.surfaceWidthM()).isCloseTo(above.surfaceWidthM(), within(1e-9));
  }

  @Property
  void areaGrowsWithDepthByTheWidthOfTheSurface(
      @ForAll @DoubleRange(min = 0.01, max = 0.98) @Scale(8) double depth) {
    double step = 1e-6;
    CircularSegment lower = new CircularSegment(1, depth);
    CircularSegment upper = new CircularSegment(1, depth + step);
    assertThat((upper.areaM2() - lower.areaM2()) / step)
        .isCloseTo(lower.surfaceWidthM(), within(1e-4));
  }
}
