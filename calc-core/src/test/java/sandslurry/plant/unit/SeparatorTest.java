package sandslurry.plant.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.material.sand.GrainShape;
import sandslurry.plant.Constituents;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Plant;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.BedQuality;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.Network;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.Unit;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.schedule.DayRun;
import sandslurry.separation.box.DilutionBox;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.cyclone.Hydrocyclone;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.screen.CakeSeparator;

class SeparatorTest {
  private static final LiquorModel COLD = new LiquorModel(283.15, GrainShape.NATURAL, 1);

  private static Unit box(double areaM2, double rinse, String... inlets) {
    List<String> in = List.of(inlets);
    return new BoxUnit(
            new Separator.Place("box", in, "sand", "overflow", 1),
            new DilutionBox(areaM2, 1, 1, 0.18, rinse, 0.6, OptionalDouble.empty(), 0.4),
            in.contains("rinse") ? Optional.of("rinse") : Optional.empty(),
            Range.of(0.6),
            20)
        .built(Under.liquor(COLD));
  }

  private static Unit lane() {
    return new LaneUnit(
            new Separator.Place("lane", List.of("in"), "sand", "out", 1),
            List.of(
                new LaneReach(
                    new OpenChannel(2, 0.002, 0.015), 12, OptionalDouble.of(0.3), 0.2, 1)),
            OptionalDouble.of(0),
            1,
            0,
            0,
            12,
            0,
            1.5)
        .built(Under.liquor(COLD));
  }

  private static Unit cyclone(
      List<String> in, String underflow, String overflow, double bodyM, double apexM) {
    return new CycloneUnit(
            new Separator.Place("cyclone", in, underflow, overflow, 1),
            new Hydrocyclone(HydrocycloneGeometry.rietema(bodyM, apexM), 1),
            HydrocycloneModels.DEFAULT,
            500,
            0.5)
        .built(Under.liquor(COLD));
  }

  private static Unit cake(
      String name, List<String> in, String cake, String liquid, CakeSeparator separator) {
    return new CakeUnit(new Separator.Place(name, in, cake, liquid, 1), "screen", separator)
        .built(Under.liquor(COLD));
  }

  private static Stream laden(double totalSolids) {
    return Stream.liquor(THREE, 20, totalSolids, ManureSolids.FRESH).plus(THREE.deliveredSand(0.3));
  }

  private static double caught(Unit unit, Stream feed) {
    return Plant.run(unit, feed).get("sand").sandKgps() / feed.sandKgps();
  }

  @Test
  void thickerLiquorLetsLessSandSettleInLaneAndBox() {
    assertThat(caught(lane(), laden(0.005))).isGreaterThan(1.05 * caught(lane(), laden(0.06)));
    assertThat(caught(box(10, 0, "in"), laden(0.005)))
        .isGreaterThan(1.05 * caught(box(10, 0, "in"), laden(0.06)));
  }

  /**
   * Undiluted manure carries its sand: that is how it is pumped thick (common practice, no source).
   */
  @Test
  void noAreaSettlesTheSandThatUndilutedManureHolds() {
    assertThat(caught(box(1000, 0, "in"), laden(0.12))).isLessThan(0.02);
    assertThat(caught(box(1000, 0, "in"), laden(0.09))).isBetween(0.05, 0.6);
    assertThat(caught(box(1000, 0, "in"), laden(0.03))).isGreaterThan(0.99);
  }

  @Test
  void manureThatIsNoLiquidLetsNothingSettleAndSaysSo() {
    Split split = lane().split(laden(0.15));
    assertThat(split.shares()[0]).containsOnly(0);
    UnitNote note = split.notes().get(0);
    assertThat(note.unit()).isEqualTo("lane");
    assertThat(note.reason()).isEqualTo(UnitNote.Reason.TOO_THICK);
    assertThat(note.value()).isEqualTo(0.15, within(1e-9));
    assertThat(lane().split(THREE.water(0)).shares()[1]).containsOnly(1);
  }

  @Test
  void aRinseWashesTheSandWithWaterOfItsOwnInlet() {
    Stream plain = laden(0.02);
    BedQuality unwashed = BedQuality.of(Plant.run(box(20, 0, "in"), plain).get("sand"));
    Stream rinse = THREE.water(0.5);
    BedQuality washed =
        BedQuality.of(Plant.run(box(20, 3, "in", "rinse"), plain, rinse).get("sand"));
    // The water is 18 % of all that leaves.
    assertThat(unwashed.moisture()).isEqualTo(0.18, within(1e-12));
    assertThat(washed.mineralFines()).isLessThan(0.3 * unwashed.mineralFines());
  }

  @Test
  void aCycloneSendsCoarseSandDownAndReportsARope() {
    Unit cyclone = cyclone(List.of("in"), "sand", "over", 0.25, 0.04);
    Split split = cyclone.split(laden(0.01));
    double[] under = split.shares()[0];
    assertThat(under[Constituents.SAND + 2]).isGreaterThan(under[Constituents.SAND]);
    assertThat(under[Constituents.SAND]).isGreaterThan(under[Constituents.WATER]);
    Stream rich = laden(0.01).plus(THREE.deliveredSand(8));
    assertThat(cyclone.split(rich).notes())
        .singleElement()
        .satisfies(note -> assertThat(note.reason()).isEqualTo(UnitNote.Reason.ROPES))
        .satisfies(note -> assertThat(note.value()).isGreaterThan(note.wanted()));
  }

  /** A tenth of the flow is some sixtieth of the pressure. */
  @Test
  void aCycloneFedTooSlowlyToSpinCapturesNothing() {
    Unit cyclone = cyclone(List.of("in"), "sand", "over", 0.25, 0.04);
    assertThat(cyclone.split(laden(0.01)).notes()).isEmpty();
    Split slow = cyclone.split(laden(0.01).times(0.1));
    assertThat(slow.shares()[0]).containsOnly(0);
    assertThat(slow.notes())
        .singleElement()
        .satisfies(note -> assertThat(note.reason()).isEqualTo(UnitNote.Reason.NO_VORTEX))
        .satisfies(note -> assertThat(note.value()).isLessThan(note.wanted()))
        .satisfies(note -> assertThat(note.wanted()).isEqualTo(4.6 * 0.25));
  }

  @Test
  void aFibreSeparatorGivesTheCakeAskedFor() {
    Unit press =
        cake(
            "press",
            List.of("in"),
            "cake",
            "liquid",
            new CakeSeparator(OptionalDouble.empty(), 0.5, 0.1, 0.28));
    Map<String, Stream> out = Plant.run(press, Stream.liquor(THREE, 1, 0.06, ManureSolids.FRESH));
    assertThat(Plant.totalSolidsWithSand(out.get("cake"))).isEqualTo(0.28, within(1e-9));
    assertThat(out.get("cake").kgps(Constituents.FIBRE))
        .isGreaterThanOrEqualTo(0.5 * 0.06 * 0.54 - 1e-12);
  }

  /** Box, screen, cyclone back to the box, polishing box, pit, fibre separator, liquid back. */
  private static Network closedLoop(double recycleM3ps, double sharpness) {
    List<Unit> units =
        List.of(
            box(sharpness, 0, "manure", "recycle", "underflow"),
            cake(
                "screen",
                List.of("overflow"),
                "trash",
                "screened",
                new CakeSeparator(OptionalDouble.of(0.012), 0.02, 0, 0.2)),
            cyclone(List.of("screened"), "underflow", "over the top", 0.10, 0.015),
            Under.box(
                "polishing box",
                List.of("over the top"),
                "fine sand",
                "polished",
                new DilutionBox(8, 1, 1, 0.2, 0, 0, OptionalDouble.empty(), 0.4),
                COLD,
                20),
            cake(
                "fibre separator",
                List.of("polished", "wash"),
                "fibre",
                "liquid",
                new CakeSeparator(OptionalDouble.empty(), 0.6, 0.1, 0.28)),
            new Pit(
                "pit",
                List.of("liquid"),
                Map.of("recycle", recycleM3ps),
                Optional.of("surplus"),
                40,
                60,
                40));
    return Network.of(
        units,
        List.of("manure", "wash"),
        List.of("sand", "trash", "fine sand", "fibre", "surplus"));
  }

  @Test
  void theWholeLoopComesToRestAndConservesEachConstituent() {
    SteadyBalance balance = Plant.balance(closedLoop(1.5e-3, 6), Plant.feeds(0.4));
    assertThat(balance.imbalance()).isLessThan(1e-9);
    assertThat(balance.passes()).isLessThan(100);
    for (int i = 0; i < THREE.count(); i++) {
      double out = 0;
      for (Stream product : balance.products().values()) {
        out += product.kgps(i);
      }
      double in = Plant.MANURE.kgps(i) + (i == Constituents.WATER ? 0.4 : 0);
      assertThat(out).isEqualTo(in, within(1e-9 * in));
    }
  }

  @Test
  void theThinStateIsFoundForAnyRecycleAndWater() {
    for (double recycle : new double[] {1.5e-3, 5e-3, 15e-3}) {
      for (double wash : new double[] {0.4, 2}) {
        SteadyBalance balance = Plant.balance(closedLoop(recycle, 6), Plant.feeds(wash));
        assertThat(balance.notes()).isEmpty();
        assertThat(balance.stream("recycle").volumeM3ps()).isEqualTo(recycle, within(1e-9));
        assertThat(balance.stream("recycle").totalSolids()).isLessThan(0.09);
        assertThat(balance.passes()).isLessThan(100);
      }
    }
  }

  /**
   * Below one volume of liquor to one of manure sand stays trapped (common practice, no source).
   */
  @Test
  void aLoopThatHardlyDilutesLosesItsSand() {
    SteadyBalance balance = Plant.balance(closedLoop(0.3e-3, 6), Plant.feeds(0));
    assertThat(balance.stream("sand").sandKgps()).isLessThan(0.3 * Plant.MANURE.sandKgps());
  }

  @Test
  void theLoopSettlesMoreSandWhenFreshWaterThinsIt() {
    SteadyBalance dry = Plant.balance(closedLoop(1.5e-3, 6), Plant.feeds(0.1));
    SteadyBalance wet = Plant.balance(closedLoop(1.5e-3, 6), Plant.feeds(2));
    assertThat(wet.stream("recycle").totalSolids())
        .isLessThan(0.5 * dry.stream("recycle").totalSolids());
    assertThat(lost(wet)).isLessThan(lost(dry));
  }

  @Test
  void aDayOfTheWholeLoopConservesEachConstituentAndRepeatsItself() {
    Mode mode = new Mode("recycle", closedLoop(1.5e-3, 6), Plant.feeds(0.4));
    DayRun run = Plant.always(mode).run(2, Map.of(), 1800);
    assertThat(run.stopped()).isEmpty();
    assertThat(run.days()).hasSize(2).allMatch(day -> day.imbalance() < 1e-9);
    DayRun again = Plant.always(mode).run(2, Map.of(), 1800);
    assertThat(again.days().get(1).meanFlows()).isEqualTo(run.days().get(1).meanFlows());
    assertThat(List.copyOf(run.days().get(0).meanFlows().keySet()))
        .startsWith("manure", "wash")
        .contains("recycle", "surplus");
  }

  private static double lost(SteadyBalance balance) {
    return balance.stream("surplus").sandKgps() + balance.stream("fibre").sandKgps();
  }
}
