package sandslurry.plant;

import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sandslurry.plant.climate.ClimateRecord;
import sandslurry.plant.climate.ClimateRecord.Series;
import sandslurry.plant.climate.ClimateRecords;
import sandslurry.units.Measure;

/** The years of the climate records against the years printed beside their months. */
class ClimateRecordsReferenceTest {
  private static ClimateRecord record(String id) {
    return ClimateRecords.ALL.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static double meanFahrenheit(Series airK) {
    return Measure.TEMPERATURE
        .entry("degF")
        .fromSi(airK.values().stream().mapToDouble(k -> k).average().orElseThrow());
  }

  private static double inches(Series metres) {
    return Measure.LENGTH
        .entry("in")
        .fromSi(IntStream.range(0, 12).mapToDouble(i -> metres.values().get(i)).sum());
  }

  @Test
  void theMeanOfTheYearIsThatPrinted() {
    // NCEI normals 1991-2020 of USW00014837, read at mrcc.purdue.edu, "Temperature Summary": annual
    // mean 47 degF; the mean of months of unequal length differs by a tenth: the tolerance.
    ours(meanFahrenheit(record("madison-wisconsin").airK().orElseThrow()))
        .isCloseTo(47, within(0.15));
    // Oregon Climate Service, station 6532, 1971-2000, read at ocs.orst.edu: 53.8 degF.
    ours(meanFahrenheit(record("pelton-dam-oregon").airK().orElseThrow()))
        .isCloseTo(53.8, within(0.1));
  }

  @Test
  void theSumOfTheYearIsThatPrinted() {
    // Same page: 10.80 in of precipitation. Tolerance: months rounded to hundredths.
    ours(inches(record("pelton-dam-oregon").rainM().orElseThrow())).isCloseTo(10.80, within(0.011));
    // Molnau, Kpordze and Craine (1992), read at snow.ag.uidaho.edu: 30 in of shallow pond
    // evaporation at Grangeville.
    ours(inches(record("grangeville-idaho").evaporationM().orElseThrow()))
        .isCloseTo(30, within(0.01));
    // California DWR Bulletin 113-3 (1975), table 1, read at esce.ucr.edu: 63.9 in of pan
    // evaporation in the San Joaquin Valley, January to December.
    ours(inches(record("san-joaquin-valley").evaporationM().orElseThrow()))
        .isCloseTo(63.9, within(0.01));
  }
}
