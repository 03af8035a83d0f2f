package sandslurry.plant.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Plant;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.UnitNote;

class SolidsSeparatorProperties {
  @Property
  void theSolidsHaveTheDryMatterGivenOrANoteSaysWhyNot(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double capture,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.3) double totalSolids,
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 1) double dryMatter) {
    SolidsSeparator press =
        new SolidsSeparator(
            "press", List.of("in"), "cake", "liquid", Plant.fibreOnly(capture, 0), dryMatter);
    Stream feed = Stream.liquor(THREE, 1, totalSolids, ManureSolids.FRESH);
    Map<String, Stream> out = Plant.run(press, feed);
    Stream cake = out.get("cake");
    assertThat(cake.massKgps() + out.get("liquid").massKgps()).isEqualTo(1, within(1e-12));
    if (cake.massKgps() > 1e-12 && press.split(feed).notes().isEmpty()) {
      assertThat(Plant.totalSolidsWithSand(cake)).isEqualTo(dryMatter, within(1e-6));
    }
    if (dryMatter > 0.31) {
      assertThat(press.split(feed).notes()).isEmpty();
    }
  }

  @Example
  void liquorThickerThanTheCakeIsNoted() {
    SolidsSeparator press =
        new SolidsSeparator(
            "press", List.of("in"), "cake", "liquid", Plant.fibreOnly(0.5, 0), 0.05);
    Split split = press.split(Stream.liquor(THREE, 1, 0.2, ManureSolids.FRESH));
    assertThat(split.notes())
        .singleElement()
        .isEqualTo(new UnitNote("press", UnitNote.Reason.LIQUOR_SHORT, 0.05, 0.05));
  }

  @Example
  void aLawForOtherSandIsRefused() {
    CaptureLaw wrong = CaptureLaw.fixed(new CaptureLaw.Captured(0, 0, 0, List.of(1.0), List.of()));
    SolidsSeparator box = new SolidsSeparator("box", List.of("in"), "s", "l", wrong, 0.8);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> box.split(Plant.MANURE))
        .withMessageContaining("3 classes");
  }
}
