package sandslurry.plant.climate;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sandslurry.plant.climate.ClimateRecord.Series;
import sandslurry.units.Measure;
import sandslurry.units.UnitEntry;

/**
 * The climate records to choose from. Each number was read in the text that is named beside it; no
 * text was found that gives temperature, rain and evaporation of one place together, so that a
 * record may lack some of them.
 */
public final class ClimateRecords {
  private static final UnitEntry<?> FAHRENHEIT = Measure.TEMPERATURE.entry("degF");
  private static final UnitEntry<?> INCH = Measure.LENGTH.entry("in");

  /** All records. */
  public static final List<ClimateRecord> ALL =
      List.of(
          new ClimateRecord(
              "madison-wisconsin",
              "Madison, Wisconsin (Dane County Regional Airport)",
              of(
                  FAHRENHEIT,
                  "NCEI climate normals 1991-2020, station USW00014837, as given by the Midwestern"
                      + " Regional Climate Center",
                  19.4,
                  23,
                  34.4,
                  46.3,
                  58.1,
                  68,
                  71.9,
                  69.7,
                  62,
                  49.7,
                  36.7,
                  25.3),
              Optional.empty(),
              Optional.empty()),
          new ClimateRecord(
              "pelton-dam-oregon",
              "Pelton Dam, Oregon",
              of(
                  FAHRENHEIT,
                  "Oregon Climate Service, monthly means and extremes 1971-2000, station 6532",
                  36.0,
                  40.8,
                  46.5,
                  52.2,
                  59.4,
                  66.5,
                  73.0,
                  72.7,
                  64.8,
                  54.2,
                  42.9,
                  36.2),
              of(
                  INCH,
                  "Oregon Climate Service, monthly means and extremes 1971-2000, station 6532",
                  1.65,
                  1.10,
                  .95,
                  .80,
                  .85,
                  .56,
                  .37,
                  .44,
                  .41,
                  .65,
                  1.53,
                  1.49),
              Optional.empty()),
          new ClimateRecord(
              "grangeville-idaho",
              "Grangeville, Idaho",
              Optional.empty(),
              Optional.empty(),
              of(
                  INCH,
                  "Molnau, Kpordze and Craine (1992), Monthly shallow pond evaporation in Idaho,"
                      + " ASAE paper PNW 92-111",
                  0.2,
                  0.4,
                  0.9,
                  2.4,
                  3.6,
                  4.5,
                  5.7,
                  5.1,
                  3.3,
                  1.8,
                  1.2,
                  0.9)),
          new ClimateRecord(
              "san-joaquin-valley",
              "San Joaquin Valley, California",
              Optional.empty(),
              Optional.empty(),
              Optional.of(
                  new Series(
                      si(INCH, 1.3, 2.3, 4.2, 5.9, 8.3, 9.6, 10.0, 8.5, 6.3, 4.4, 2.1, 1.0),
                      true,
                      "California Department of Water Resources (1975), Vegetative water use in"
                          + " California, 1974, Bulletin 113-3, table 1, class A pans in irrigated"
                          + " pasture"))));

  private ClimateRecords() {}

  private static Optional<Series> of(UnitEntry<?> unit, String source, double... months) {
    return Optional.of(new Series(si(unit, months), false, source));
  }

  private static List<Double> si(UnitEntry<?> unit, double... months) {
    return Arrays.stream(months).map(unit::toSi).boxed().toList();
  }
}
