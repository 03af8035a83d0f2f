package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.pipe.Bore;

/** What a bed at rest leaves of a pipe: limits, a case by hand, and what must grow with it. */
class OpenSectionProperties {
  private static final Bore PIPE = new Bore(0.2, 1e-4);

  @Example
  void withoutABedItIsThePipe() {
    OpenSection open = new OpenSection(PIPE, 0, 1e-3);
    assertThat(open.areaM2()).isEqualTo(PIPE.areaM2());
    assertThat(open.equivalent().diameterM()).isCloseTo(0.2, within(1e-12));
    assertThat(open.equivalent().roughnessM()).isCloseTo(1e-4, within(1e-15));
    assertThat(open.roughest().roughnessM()).isEqualTo(1e-4);
    assertThat(open.equivalentFlowM3ps(0.05)).isCloseTo(0.05, within(1e-12));
  }

  @Example
  void halfFullItIsByHand() {
    OpenSection open = new OpenSection(PIPE, 0.5, 1e-3);
    // Half the area over half the wall and one bore: pi D / (pi + 2).
    assertThat(open.equivalent().diameterM())
        .isCloseTo(Math.PI * 0.2 / (Math.PI + 2), within(1e-12));
    assertThat(open.equivalent().roughnessM())
        .isCloseTo((1e-4 * Math.PI / 2 + 1e-3) / (Math.PI / 2 + 1), within(1e-12));
    assertThat(open.bedAreaM2()).isCloseTo(PIPE.areaM2() / 2, within(1e-12));
  }

  @Property
  void aDeeperBedLeavesLess(
      @ForAll @DoubleRange(min = 0, max = 0.85) double depth,
      @ForAll @DoubleRange(min = 0.01, max = 0.05) double more) {
    OpenSection shallow = new OpenSection(PIPE, depth, 1e-3);
    OpenSection deep = new OpenSection(PIPE, depth + more, 1e-3);
    assertThat(deep.areaM2()).isLessThan(shallow.areaM2());
    assertThat(deep.equivalent().diameterM()).isLessThan(shallow.equivalent().diameterM());
    assertThat(deep.areaM2() + deep.bedAreaM2()).isCloseTo(PIPE.areaM2(), within(1e-15));
    assertThat(deep.roughest().diameterM()).isEqualTo(deep.equivalent().diameterM());
    assertThat(deep.roughest().roughnessM())
        .isEqualTo(Math.min(1e-3, 0.1 * deep.equivalent().diameterM()))
        .isGreaterThanOrEqualTo(deep.equivalent().roughnessM());
    double velocity = deep.equivalent().velocityMps(deep.equivalentFlowM3ps(0.05));
    assertThat(velocity).isCloseTo(0.05 / deep.areaM2(), within(1e-9));
  }
}
