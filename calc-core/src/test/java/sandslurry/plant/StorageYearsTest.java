package sandslurry.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.plant.account.BedQuality;
import sandslurry.plant.account.Pond;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.account.StorageAccount.Month;

/** Storage by the level reached, its years with sand, and bedding on sieves. */
class StorageYearsTest {
  private static StorageAccount account(
      Pond pond, double inflow, double rain, double evaporation, double sand, double settled) {
    return new StorageAccount(
        pond,
        List.of(
            new Month("wet", 180, inflow, rain, evaporation / 4),
            new Month("dry", 185, inflow, rain / 4, evaporation)),
        0.1,
        0.3,
        settled,
        sand,
        2650,
        0.4,
        0);
  }

  @Test
  void evaporationIsFromTheSurfaceReachedAndNotFromTheFullOne() {
    Pond bank = new Pond(20, 10, 3, 4);
    StorageAccount dry =
        new StorageAccount(
            bank, List.of(new Month("any", 30, 3e-5, 0, 0.1)), 0, 0, 0, 0, 2650, 0.4, 0);
    // Full, more evaporates than comes in; nearly empty, less: it stops rising where both are
    // equal.
    assertThat(dry.netInflowM3(0)).isNegative();
    assertThat(dry.worstFilling()).isEmpty();
    double surface = 3e-5 * 86_400 * 30 / 0.1;
    // (20 + 6 h)(10 + 6 h) = surface
    double level = (-180 + Math.sqrt(180 * 180 + 4 * 36 * (surface - 200))) / 72;
    double held = dry.roomNeededM3(20_000);
    assertThat(bank.areaM2(level)).isCloseTo(surface, withinPercentage(1e-6));
    assertThat(held).isCloseTo(bank.volumeM3(level), withinPercentage(1));
  }

  @Test
  void withUprightWallsTheLevelMakesNoDifference() {
    StorageAccount box = account(new Pond(50, 20, 0, 4), 3e-4, 0.3, 0.1, 0, 0);
    double net = box.netInflowM3(0) + box.netInflowM3(1);
    assertThat(net).isPositive();
    assertThat(box.roomNeededM3(365))
        .isCloseTo(Math.max(net, box.netInflowM3(0)), within(1e-6 * net));
  }

  @Test
  void theYearInWhichSandCutsIntoTheReserveIsThatOfASimulationYearByYear() {
    Pond pond = new Pond(50, 30, 2, 4);
    double sand = 0.02;
    StorageAccount now = account(pond, 3e-4, 0.4, 0.5, sand, 0);
    double years = now.yearsUntilShortOf(180).orElseThrow();
    assertThat(years).isBetween(2.0, 200.0);
    int year = 0;
    while (account(pond, 3e-4, 0.4, 0.5, sand, year * now.sandPerYearM3())
            .worstFilling()
            .map(StorageAccount.Filling::days)
            .orElse(1e9)
        >= 180) {
      year++;
    }
    // With sand the liquid stands higher and evaporates from more: a little later, never sooner.
    assertThat(year).isBetween((int) Math.ceil(years), (int) Math.ceil(years * 1.1) + 1);
    assertThat(account(pond, 3e-4, 0.4, 0.5, 0, 0).yearsUntilShortOf(180)).isEmpty();
    assertThat(account(pond, 3e-4, 0.4, 0.5, sand, 5000).yearsUntilShortOf(180)).hasValue(0);
  }

  @Test
  void theMonthInWhichItRunsOverIsNamed() {
    StorageAccount one = account(new Pond(50, 30, 2, 4), 4e-4, 0.4, 0.2, 0, 0);
    StorageAccount.Filling room = one.worstFilling().orElseThrow();
    StorageAccount.Filling brim = one.worstToTheBrim().orElseThrow();
    assertThat(room.startMonth()).isZero();
    assertThat(brim.days()).isGreaterThan(room.days());
    double into = brim.days() % 365;
    assertThat(brim.month()).isEqualTo(into <= 180 ? 0 : 1);
    // What is held when the room is full is the room.
    assertThat(one.roomNeededM3(room.days())).isCloseTo(one.roomM3(), withinPercentage(1e-6));
  }

  @Test
  void theMoreDaysAreWantedTheMoreRoomIsNeeded() {
    StorageAccount one = account(new Pond(50, 30, 2, 4), 4e-4, 0.4, 0.6, 0, 0);
    double before = 0;
    for (int days = 10; days < 400; days += 10) {
      double needed = one.roomNeededM3(days);
      assertThat(needed).isGreaterThanOrEqualTo(before);
      before = needed;
    }
    assertThat(one.roomNeededM3(0)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"0.075e-3, 0", "0.15e-3, 0.2", "0.3e-3, 0.45", "0.6e-3, 0.7", "2.4e-3, 1", "9e-3, 1"})
  void whatPassesASieveIsTheMassOfTheFinerClasses(double sieve, double ofSand) {
    // Three classes of 20, 50 and 30 %, and 3 % of mineral fines besides.
    Stream sand = THREE.deliveredSand(1);
    assertThat(BedQuality.passing(sand, sieve)).isCloseTo(0.03 + 0.97 * ofSand, within(1e-9));
    assertThatIllegalArgumentException().isThrownBy(() -> BedQuality.passing(sand, 0.03e-3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BedQuality.passing(THREE.water(1), sieve));
  }

  @Test
  void rangesOfThingsThatAreNotNegativeMultiply() {
    assertThat(new Range(1, 2, 3).times(new Range(10, 20, 40))).isEqualTo(new Range(10, 40, 120));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(-1, 0, 1).times(Range.of(1)));
  }

  @Test
  void sandThatNeverReachesThePlantIsBeddedLessFlushed() {
    Stream bedded = THREE.deliveredSand(1);
    SandAccount account =
        new SandAccount(bedded, bedded.times(0.8), bedded.times(0.6), 1, java.util.Map.of());
    assertThat(account.beforeThePlantKgps()).isCloseTo(0.2 * 0.97, within(1e-12));
    assertThat(account.stillInTheLineKgps()).isCloseTo(0.2 * 0.97, within(1e-12));
    assertThat(account.recoveryOfFlushed()).isCloseTo(0.75, within(1e-12));
    assertThat(account.recoveryOfBedded()).isCloseTo(0.6, within(1e-12));
  }
}
