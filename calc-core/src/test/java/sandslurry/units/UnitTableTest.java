package sandslurry.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class UnitTableTest {
  @TestFactory
  Stream<DynamicTest> eachFactorIsThatOfTheUnitsLibrary() {
    return Measure.all().stream().flatMap(UnitTableTest::comparisons);
  }

  private static <Q extends Quantity<Q>> Stream<DynamicTest> comparisons(Measure<Q> measure) {
    Unit<Q> si = measure.units().get(0).unit();
    return measure.units().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    measure + " in " + entry.symbol(),
                    () -> {
                      for (double number : new double[] {1, 0.37, 1234.5}) {
                        double library = entry.unit().getConverterTo(si).convert(number);
                        assertThat(entry.toSi(number))
                            .isEqualTo(library, within(4e-16 * Math.abs(library)));
                        assertThat(entry.fromSi(entry.toSi(number)))
                            .isEqualTo(number, within(1e-12 * Math.abs(number)));
                      }
                    }));
  }

  @Test
  void theFirstUnitOfAMeasureIsTheSiUnit() {
    for (Measure<?> measure : Measure.all()) {
      UnitEntry<?> first = measure.units().get(0);
      assertThat(first.factor()).as(measure.name()).isEqualTo(1);
      assertThat(first.offset()).as(measure.name()).isZero();
    }
  }

  @Test
  void noSpellingMeansTwoUnitsOfAMeasure() {
    for (Measure<?> measure : Measure.all()) {
      Map<String, UnitEntry<?>> seen = new HashMap<>();
      for (UnitEntry<?> entry : measure.units()) {
        List<String> spellings = new ArrayList<>(entry.aliases());
        spellings.add(entry.symbol());
        for (String spelling : spellings) {
          UnitEntry<?> other = seen.put(spelling.toLowerCase(Locale.ROOT), entry);
          assertThat(other == null || other == entry).as(measure + ": " + spelling).isTrue();
          assertThat(measure.entry(spelling)).as(measure + ": " + spelling).isSameAs(entry);
        }
      }
    }
  }

  @Test
  void takesQuantitiesInUnitsOfTheLibraryToo() {
    Quantity<Length> kilometre = Quantities.getQuantity(2, Units.METRE.multiply(1000));
    assertThat(Measure.LENGTH.si(kilometre)).isEqualTo(2000);
    assertThat(Measure.LENGTH.write(kilometre)).isEqualTo("2000 m");
  }

  @Test
  void refusesNumbersThatAreNotFinite() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Measure.LENGTH.of(Double.NaN))
        .withMessageContaining("length");
    assertThatIllegalArgumentException().isThrownBy(() -> Measure.LENGTH.of(1 / 0.0, "ft"));
  }

  @Test
  void plainNumbersForCorrelationsComeFromTheTable() {
    assertThat(InUnit.MILLIMETRE.of(0.001)).isEqualTo(1);
    assertThat(InUnit.MICROMETRE.of(75e-6)).isEqualTo(75, within(1e-12));
    assertThat(InUnit.CENTIMETRE.of(0.25)).isEqualTo(25);
    assertThat(InUnit.INCH.of(0.3048)).isEqualTo(12, within(1e-14));
    assertThat(InUnit.FOOT.of(0.3048)).isEqualTo(1);
    assertThat(InUnit.LITRE_PER_MINUTE.of(0.001)).isEqualTo(60, within(1e-13));
    assertThat(InUnit.CENTIPOISE.of(0.001)).isEqualTo(1);
    assertThat(InUnit.KILOPASCAL.of(101325)).isEqualTo(101.325, within(1e-12));
    assertThat(InUnit.PERCENT.of(0.2)).isEqualTo(20, within(1e-13));
  }
}
