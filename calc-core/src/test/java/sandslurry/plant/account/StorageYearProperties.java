package sandslurry.plant.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.plant.account.StorageAccount.Month;
import sandslurry.plant.account.StorageYear.Course;
import sandslurry.plant.account.StorageYear.Emptying;
import sandslurry.plant.account.StorageYear.Water;

/** The course of a storage through a year: water is kept, more rain is more liquid. */
class StorageYearProperties {
  private static final double DAY = 86400;

  private static StorageAccount account(Pond pond, List<Month> months, double runoffM2) {
    return new StorageAccount(pond, months, 0.1, 0.3, 50, 0.01, 2650, 0.4, runoffM2);
  }

  private static Emptying share(int month, double share) {
    return new Emptying(month, OptionalDouble.empty(), OptionalDouble.of(share));
  }

  private static Emptying volume(int month, double volumeM3) {
    return new Emptying(month, OptionalDouble.of(volumeM3), OptionalDouble.empty());
  }

  /** Twelve months of 30 d; rain has its most in winter, evaporation in summer. */
  private static List<Month> months(double inflow, double rain, double evaporation) {
    List<Month> months = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double winter = 1 + Math.cos(2 * Math.PI * i / 12);
      months.add(new Month("m" + i, 30, inflow, rain * winter, evaporation * (2 - winter)));
    }
    return months;
  }

  @Example
  void aYearOfUprightWallsIsThatByHand() {
    // 1000 m2 with walls of 4 m, no sand, storm and freeboard: 10 m3/d comes, so 300 m3 a month;
    // 50 mm of rain on 1000 m2 and on 200 m2 beside it are 60 m3, 40 mm evaporate 40 m3: 320 m3 a
    // month, 3840 m3 a year. Half is taken at the end of month 6, all at the end of month 12.
    List<Month> months = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      months.add(new Month("m" + i, 30, 10 / DAY, 0.05, 0.04));
    }
    StorageAccount box =
        new StorageAccount(new Pond(50, 20, 0, 4), months, 0, 0, 0, 0, 2650, 0.4, 200);
    StorageYear year = StorageYear.of(box, List.of(share(5, 0.5), share(11, 1)));
    assertThat(year.repeats()).isTrue();
    assertThat(year.full()).isEmpty();
    for (int i = 0; i < 12; i++) {
      Course month = year.months().get(i);
      double start = i < 6 ? 320 * i : 960 + 320 * (i - 6);
      assertThat(month.startM3()).isCloseTo(start, within(1e-9));
      assertThat(month.mostM3()).isCloseTo(start + 320, within(1e-9));
      assertThat(month.freeboardM()).isCloseTo(4 - (start + 320) / 1000, within(1e-9));
      assertThat(month.water().runoffM3()).isCloseTo(10, within(1e-9));
      assertThat(month.water().netM3()).isCloseTo(320, within(1e-9));
    }
    assertThat(year.months().get(5).water().withdrawnM3()).isCloseTo(960, within(1e-9));
    assertThat(year.months().get(11).water().withdrawnM3()).isCloseTo(2880, within(1e-9));
    assertThat(year.highest()).isEqualTo(11);
  }

  @Example
  void theDayOnWhichTheRoomIsUsedUpIsThatByHand() {
    // As above without rain and evaporation and with 1.05 m of freeboard: 2950 m3 of room. Emptied
    // once a year at the end of the last month, 10 m3/d fill it on day 295, in the tenth month.
    List<Month> months = months(10 / DAY, 0, 0);
    StorageAccount box =
        new StorageAccount(new Pond(50, 20, 0, 4), months, 0, 1.05, 0, 0, 2650, 0.4, 0);
    StorageYear year = StorageYear.of(box, List.of(share(11, 1)));
    assertThat(year.repeats()).isTrue();
    assertThat(year.full().orElseThrow().day()).isCloseTo(295, within(1e-9));
    assertThat(year.full().orElseThrow().month()).isEqualTo(9);
    // Emptied by 3000 m3 a year it gains 600 m3 in the first: the 3400 m3 left to the brim come in
    // the first 340 days of the second.
    StorageYear gains = StorageYear.of(box, List.of(volume(11, 3000)));
    assertThat(gains.repeats()).isFalse();
    assertThat(gains.gainM3()).isCloseTo(600, within(1e-9));
    assertThat(gains.full().orElseThrow().year()).isEqualTo(1);
    assertThat(gains.over().orElseThrow().year()).isEqualTo(2);
    assertThat(gains.over().orElseThrow().day()).isCloseTo(340, within(1e-9));
    // Never emptied it is full within 400 days.
    StorageYear never = StorageYear.of(box, List.of());
    assertThat(never.repeats()).isFalse();
    assertThat(never.over().orElseThrow().year()).isEqualTo(2);
    assertThat(never.over().orElseThrow().day()).isCloseTo(400 - 360, within(1e-9));
  }

  @Property(tries = 200)
  void waterThatComesIsTakenEvaporatesSpillsOrIsHeld(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2e-3) double inflow,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double rain,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.3) double evaporation,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double share,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 9000) double volume,
      @ForAll @IntRange(min = 0, max = 11) int month) {
    Pond pond = new Pond(60, 40, 2, 4);
    StorageAccount account = account(pond, months(inflow, rain, evaporation), 300);
    StorageYear year = StorageYear.of(account, List.of(share(month, share), volume(4, volume)));
    double came = 1;
    double went = 0;
    for (Course one : year.months()) {
      Water water = one.water();
      assertThat(
              one.startM3() + water.netM3() - water.withdrawnM3() - water.spilledM3() - one.endM3())
          .isCloseTo(0, within(1e-9 * pond.volumeM3()));
      assertThat(water.evaporationM3()).isGreaterThanOrEqualTo(0);
      assertThat(one.mostM3()).isGreaterThanOrEqualTo(one.endM3());
      assertThat(one.freeboardM()).isGreaterThanOrEqualTo(-1e-9);
      came += water.inflowM3() + water.rainM3() + water.runoffM3();
      went += water.evaporationM3() + water.withdrawnM3() + water.spilledM3();
    }
    for (int i = 1; i < 12; i++) {
      assertThat(year.months().get(i).startM3()).isEqualTo(year.months().get(i - 1).endM3());
    }
    assertThat(came - 1 - went).isCloseTo(year.gainM3(), within(1e-9 * (came + pond.volumeM3())));
    if (year.repeats()) {
      assertThat(year.gainM3()).isCloseTo(0, within(1e-8 * pond.volumeM3()));
      assertThat(year.over()).isEmpty();
    } else {
      assertThat(year.over()).isPresent();
    }
  }

  @Property(tries = 100)
  void moreRainIsMoreLiquidInEveryMonth(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 5e-4) double inflow,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.15) double rain,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double evaporation,
      @ForAll @Scale(9) @DoubleRange(min = 0.3, max = 1) double share) {
    Pond pond = new Pond(60, 40, 2, 4);
    List<Emptying> emptyings = List.of(share(3, share), share(9, share));
    StorageYear dry =
        StorageYear.of(account(pond, months(inflow, rain, evaporation), 0), emptyings);
    StorageYear wet =
        StorageYear.of(account(pond, months(inflow, rain * 1.2, evaporation), 0), emptyings);
    StorageYear drained =
        StorageYear.of(account(pond, months(inflow, rain, evaporation), 500), emptyings);
    for (StorageYear more : List.of(wet, drained)) {
      if (!dry.repeats()) {
        assertThat(more.repeats()).isFalse();
      }
      // Of a year that repeats itself and a first one from empty neither holds more.
      for (int i = 0; i < 12 && more.repeats() == dry.repeats(); i++) {
        assertThat(more.months().get(i).mostM3())
            .isGreaterThanOrEqualTo(dry.months().get(i).mostM3() - 1e-8 * pond.volumeM3());
      }
    }
  }

  /** A fifth more rain fills what would have come to rest below the brim. */
  @Example
  void ofAStorageThatRunsOverTheFirstYearFromEmptyIsGiven() {
    Pond pond = new Pond(60, 40, 2, 4);
    List<Emptying> emptyings = List.of(share(3, 0.3), share(9, 0.3));
    StorageYear rests = StorageYear.of(account(pond, months(0, 0.11548871, 0), 0), emptyings);
    StorageYear fills = StorageYear.of(account(pond, months(0, 0.11548871 * 1.2, 0), 0), emptyings);
    assertThat(rests.repeats()).isTrue();
    assertThat(rests.months().get(0).startM3()).isGreaterThan(0.5 * pond.volumeM3());
    assertThat(fills.repeats()).isFalse();
    assertThat(fills.over()).isPresent();
    assertThat(fills.months().get(0).startM3()).isZero();
  }

  @Property(tries = 100)
  void aYearThatRepeatsItselfIsTheSameFromAnyMonthOn(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 4e-4) double inflow,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.1) double rain,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double evaporation,
      @ForAll @Scale(9) @DoubleRange(min = 0.5, max = 1) double share,
      @ForAll @IntRange(min = 1, max = 11) int turn) {
    Pond pond = new Pond(60, 40, 2, 4);
    List<Month> months = months(inflow, rain, evaporation);
    StorageYear year = StorageYear.of(account(pond, months, 100), List.of(share(5, share)));
    List<Month> turned = new ArrayList<>(months);
    Collections.rotate(turned, -turn);
    StorageYear other =
        StorageYear.of(
            account(pond, turned, 100), List.of(share(Math.floorMod(5 - turn, 12), share)));
    assertThat(other.repeats()).isEqualTo(year.repeats());
    if (year.repeats()) {
      for (int i = 0; i < 12; i++) {
        assertThat(other.months().get(i).mostM3())
            .isCloseTo(year.months().get((i + turn) % 12).mostM3(), within(1e-6 * pond.volumeM3()));
      }
      assertThat(other.full().isPresent()).isEqualTo(year.full().isPresent());
    }
  }

  @Example
  void anEmptyingNeedsOneOfVolumeAndShare() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Emptying(0, OptionalDouble.empty(), OptionalDouble.empty()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Emptying(0, OptionalDouble.of(1), OptionalDouble.of(1)));
    assertThatIllegalArgumentException().isThrownBy(() -> share(0, Double.NaN));
  }
}
