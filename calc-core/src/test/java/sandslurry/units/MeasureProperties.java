package sandslurry.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Quantity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class MeasureProperties {
  @Provide
  Arbitrary<Measure<?>> measures() {
    return Arbitraries.of(Measure.all());
  }

  @Provide
  Arbitrary<Double> numbers() {
    return Arbitraries.doubles().between(-1e12, 1e12).ofScale(15);
  }

  @Provide
  Arbitrary<Double> wideNumbers() {
    return Arbitraries.doubles()
        .between(-12, 12)
        .ofScale(9)
        .flatMap(e -> Arbitraries.of(-Math.pow(10, e), Math.pow(10, e)));
  }

  @Property
  void whatIsWrittenReadsBackTheSame(
      @ForAll("measures") Measure<?> measure, @ForAll("numbers") double number) {
    roundTrip(measure, number);
  }

  @Property
  void whatIsWrittenReadsBackTheSameOverManyDecades(
      @ForAll("measures") Measure<?> measure, @ForAll("wideNumbers") double number) {
    roundTrip(measure, number);
  }

  private static <Q extends Quantity<Q>> void roundTrip(Measure<Q> measure, double number) {
    for (UnitEntry<Q> entry : measure.units()) {
      Quantity<Q> quantity = measure.of(number, entry.symbol());
      Quantity<Q> back = measure.parse(measure.write(quantity));
      assertThat(back.getValue().doubleValue())
          .as(measure.write(quantity))
          .isEqualTo(quantity.getValue().doubleValue());
      assertThat(back.getUnit()).isSameAs(quantity.getUnit());
    }
  }

  @Property
  void aQuantityIsTheSameInEveryUnit(
      @ForAll("measures") Measure<?> measure, @ForAll("wideNumbers") double si) {
    invariance(measure, si);
  }

  private static <Q extends Quantity<Q>> void invariance(Measure<Q> measure, double si) {
    for (UnitEntry<Q> entry : measure.units()) {
      Quantity<Q> there = measure.of(entry.fromSi(si), entry.symbol());
      double slack = 1e-14 * (Math.abs(si) + Math.abs(entry.offset()));
      assertThat(measure.si(there)).isEqualTo(si, within(slack));
      assertThat(measure.si(measure.of(si).to(entry.unit())))
          .as("converted by the units library")
          .isEqualTo(si, within(10 * slack));
    }
  }

  @Property
  void aShownNumberIsWithinHalfAUnitOfItsLastDigit(@ForAll("wideNumbers") double number) {
    for (int digits = 1; digits <= 6; digits++) {
      double shown = Double.parseDouble(NumberText.rounded(number, digits));
      assertThat(shown)
          .isEqualTo(number, within(0.5000001 * Math.abs(number) * Math.pow(10, 1 - digits)));
    }
  }
}
