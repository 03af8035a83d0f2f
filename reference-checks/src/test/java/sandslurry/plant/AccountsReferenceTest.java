package sandslurry.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.account.BedQuality;
import sandslurry.plant.account.Pond;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.account.WaterAccount;
import sandslurry.plant.pen.Flush;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.units.Measure;

class AccountsReferenceTest {
  private static final Constituents ONE =
      new Constituents(998, 1450, 2650, List.of(new SizeClass(0.3e-3, 0.3e-3, 0.3e-3, 1)), 0);
  private static final double FOOT = Measure.LENGTH.entry("ft").toSi(1);
  private static final double CUBIC_FOOT = Measure.VOLUME.entry("ft3").toSi(1);

  private static Pond pond(double widthFt, double lengthFt, double depthFt) {
    return new Pond(lengthFt * FOOT, widthFt * FOOT, 3, depthFt * FOOT);
  }

  @ParameterizedTest(name = "{0} by {1} by {2} ft")
  @CsvSource({
    // Worksheet 10A-2 of the Agricultural Waste Management Field Handbook (USDA-NRCS), a pond in
    // Oregon, read at progressivegardening.com: width, length, depth [ft], volume [ft3] at 3:1.
    // Printed to the cubic foot; the last one from a depth rounded to a tenth.
    "100, 500, 6.0, 367392, 0.5",
    "100, 400, 6.0, 296592, 0.5",
    "100, 425, 6.0, 314292, 0.5",
    "100, 425, 6.2, 326903, 1.5",
  })
  void pondsOfTheHandbookWorksheetAreReproduced(
      double width, double length, double depth, double volume, double digits) {
    ours(pond(width, length, depth).volumeM3() / CUBIC_FOOT).isCloseTo(volume, within(digits));
  }

  @Test
  void theHandbookPondHoldsItsHundredAndEightyDays() {
    // The same worksheet: 248,040 ft3 of manure and 75,600 ft3 of wash water in 180 days, together
    // 323,640 ft3. It goes from 6.0 ft, too small, to 6.2 ft.
    double inflow = (163_800 + 49_140 + 35_100 + 75_600) * CUBIC_FOOT / (180 * 86_400.0);
    assertThat(inflow * 180 * 86_400 / CUBIC_FOOT).isCloseTo(323_640, within(0.5));
    assertThat(days(pond(100, 425, 6.0), inflow)).isLessThan(180);
    ours(days(pond(100, 425, 6.2), inflow)).isBetween(180.0, 183.0);
    // 1.30 and 0.6 ft3 a day an animal unit on 700 of them for 180 days.
    assertThat(1.30 * 700 * 180).isCloseTo(163_800, within(0.5));
  }

  private static double days(Pond pond, double inflow) {
    return new StorageAccount(
            pond,
            List.of(new StorageAccount.Month("any", 365, inflow, 0, 0)),
            0,
            0,
            0,
            0,
            2650,
            0.4,
            0)
        .daysOfStorage()
        .orElseThrow();
  }

  @Test
  void flushOfTheUniversityOfMissouriIsReproduced() {
    // University of Missouri Extension WQ313 and WQ314, read: 5 ft/s, 3 in deep, n = 0.02, R =
    // WD/(W +
    // 2D); a slope of 3 % gives it. For an alley of 12 ft, by hand: 3.02 %, 15 ft3/s or 6732
    // gal/min,
    // 1122 gal in 10 s. Tolerance: digits, and 0.3 % for 1.49 beside 1.486, twice that for a slope.
    Flush flush = new Flush(new OpenChannel(12 * FOOT, 0.0302, 0.02), 0.25 * FOOT, 10);
    ours(100 * flush.slopeFor(5 * FOOT)).isCloseTo(3, within(0.05));
    ours(100 * flush.slopeFor(5 * FOOT)).isCloseTo(3.02, withinPercentage(0.6));
    ours(flush.velocityMps() / FOOT).isCloseTo(5, withinPercentage(0.3));
    ours(Measure.FLOW.entry("gal/min").fromSi(flush.flowM3ps()))
        .isCloseTo(6732, withinPercentage(0.3));
    ours(Measure.VOLUME.entry("gal").fromSi(flush.flowM3ps() * flush.durationS()))
        .isCloseTo(1122, withinPercentage(0.3));
  }

  @ParameterizedTest(name = "slope {0} %")
  @CsvSource({
    // The same formula at 12 ft by 3 in, by hand with 1.49: slope [%], velocity
    // [ft/s]; half a per cent, of which 0.3 is the constant and the rest the printed digits.
    "1, 2.88",
    "2, 4.07",
    "3, 4.98",
    "4, 5.75",
  })
  void flushVelocityRisesWithTheRootOfTheSlope(double percent, double feetPerSecond) {
    Flush flush = new Flush(new OpenChannel(12 * FOOT, percent / 100, 0.02), 0.25 * FOOT, 10);
    ours(flush.velocityMps() / FOOT).isCloseTo(feetPerSecond, withinPercentage(0.5));
  }

  @ParameterizedTest(name = "{0} lb, {1} %")
  @CsvSource({
    // First row: a dairy with 65 lb of sand a stall and day, 75 % recovered (Fulhage 2003, ASAE
    // Publication 701P1203, abstract read): make-up 16.25 lb, 297 tons a year for 100 stalls (by
    // hand).
    // Others by hand, no outside source: use [lb/stall-d], recovery [%], lost [lb/stall-d], tons a
    // year
    // and ft3 a year at 100 lb/ft3 for 100 stalls; printed digits.
    "65, 75, 16.25, 297, 5930",
    "50, 60, 20, 365, 7300",
    "55, 85, 8.25, 151, 3010",
    "50, 90, 5, 91, 1825",
  })
  void sandLostAndBoughtIsThatOfTheAccountByHand(
      double use, double percent, double lost, double tons, double cubicFeet) {
    double pound = Measure.MASS_FLOW.entry("lb/d").toSi(1);
    Stream bedded = ONE.deliveredSand(100 * use * pound);
    Stream recovered = bedded.times(percent / 100);
    SandAccount account =
        new SandAccount(
            bedded, bedded, recovered, 1, Map.of("storage", bedded.times(1 - percent / 100)));
    ours(account.notBought()).isCloseTo(percent / 100, within(1e-12));
    ours(use * (1 - account.notBought())).isCloseTo(lost, within(0.005));
    ours(Measure.MASS.entry("ton").fromSi(365 * 86_400 * account.lost().get("storage").sandKgps()))
        .isCloseTo(tons, within(0.6));
    double bulk = 100 * Measure.DENSITY.entry("lb/ft3").toSi(1);
    StorageAccount storage =
        new StorageAccount(
            pond(100, 425, 6.2),
            List.of(new StorageAccount.Month("any", 30, 0, 0, 0)),
            0,
            0,
            0,
            account.lost().get("storage").sandKgps(),
            2650,
            1 - bulk / 2650,
            0);
    ours(storage.sandPerYearM3() / CUBIC_FOOT).isCloseTo(cubicFeet, withinPercentage(0.3));
  }

  @Test
  void aThousandCowsLoseNearlyAQuarterOfThePondEachYear() {
    // By hand: 73,000 ft3 a year from 1000 stalls at 60 % recovery is 23 % of 323,640 ft3.
    // Tolerance: half a digit.
    double sand = Measure.MASS_FLOW.entry("lb/d").toSi(20 * 1000);
    double bulk = 100 * Measure.DENSITY.entry("lb/ft3").toSi(1);
    StorageAccount storage =
        new StorageAccount(
            pond(100, 425, 6.2),
            List.of(new StorageAccount.Month("any", 30, 0, 0, 0)),
            0,
            0,
            0,
            sand,
            2650,
            1 - bulk / 2650,
            0);
    ours(storage.sandPerYearM3() / (323_640 * CUBIC_FOOT)).isCloseTo(0.23, within(0.005));
    ours(storage.yearsToTenth().orElseThrow()).isCloseTo(32_690 / 73_000.0, within(0.001));
  }

  @Test
  void aWetHeapCountsAsMoreSandThanItHolds() {
    // By hand: 15 % moisture and 4 % organic matter in the dry mass overstate the sand by a fifth,
    // rounded from 1/(0.85 · 0.96) = 1.2255.
    Stream heap = Stream.of(ONE, 0.15, 0, 0.85 * 0.04, 0, 0, 0.85 * 0.96);
    SandAccount account = new SandAccount(heap, heap, heap, 1, Map.of());
    assertThat(account.recoveryOfFlushed()).isCloseTo(1, within(1e-12));
    ours(account.recoveryAsWeighed()).isCloseTo(1.2, within(0.03));
    ours(BedQuality.of(heap).moisture()).isCloseTo(0.15, within(1e-12));
    ours(BedQuality.of(heap).organicMatter()).isCloseTo(0.04, within(1e-12));
  }

  @Test
  void anAcreFootAYearForFifteenCowsIsSixtyGallonsADay() {
    // "Water system design considerations for modern dairies", read at
    // dairy-cattle.extension.org: one acre-foot a year for 15 cows; by hand 59.5 gal a cow and day.
    // Half a digit.
    double acreFoot = 43_560 * CUBIC_FOOT;
    WaterAccount account =
        new WaterAccount(ONE.water(998 * acreFoot / (365 * 86_400.0)), ONE.water(0));
    ours(Measure.VOLUME.entry("gal").fromSi(account.freshPerDayM3()) / 15)
        .isCloseTo(59.5, within(0.05));
  }
}
