package sandslurry.plant.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.sand.GrainShape;
import sandslurry.plant.Constituents;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Plant;
import sandslurry.plant.Stream;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.DayRun;
import sandslurry.plant.unit.GivenFloor;
import sandslurry.plant.unit.LiquorModel;
import sandslurry.plant.unit.SettlingFloor;
import sandslurry.plant.unit.Splitter;
import sandslurry.separation.pit.Impeller;
import sandslurry.separation.pit.PitMixing;

class PitFloorTest {
  private static final UnitNote SWINGS =
      new UnitNote("fickle", UnitNote.Reason.CAKE_DRIER, 0.3, 0.2);

  private static final LiquorModel LIQUOR = new LiquorModel(288.15, GrainShape.NATURAL, 1);
  private static final Stream THIN =
      Stream.liquor(THREE, 2, 0.01, ManureSolids.FRESH).plus(THREE.deliveredSand(0.05));
  private static final Impeller PROPELLER = Impeller.Kind.PROPELLER.of(0.6);

  private static SettlingFloor floor(double areaM2, double speedRps) {
    return new SettlingFloor(
        "settled",
        areaM2,
        0.4,
        LIQUOR,
        speedRps < 0
            ? Optional.empty()
            : Optional.of(new SettlingFloor.Mixing(PROPELLER, speedRps)));
  }

  private static Pit pit(PitFloor floor) {
    return new Pit(
        "pit",
        List.of("in"),
        Map.of("pumped", 1e-3),
        Optional.of("over"),
        40,
        60,
        40,
        PitLevels.usual(40),
        Optional.of(floor));
  }

  private static double sandKept(PitFloor floor, Stream feed) {
    return Plant.run(pit(floor), feed).get("settled").sandKgps() / feed.sandKgps();
  }

  @Property
  void aPitConservesWhatSettlesAndWhatDoesNot(
      @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 200) double area,
      @ForAll @Scale(9) @DoubleRange(min = -1, max = 8) double speed,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.12) double solids,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 3) double sand) {
    Stream feed =
        Stream.liquor(THREE, 2, solids, ManureSolids.FRESH).plus(THREE.deliveredSand(sand));
    Map<String, Stream> out = Plant.run(pit(floor(area, speed)), feed);
    for (int i = 0; i < THREE.count(); i++) {
      double sum = 0;
      for (Stream stream : out.values()) {
        sum += stream.kgps(i);
      }
      assertThat(sum).isEqualTo(feed.kgps(i), within(1e-9 * feed.kgps(i)));
    }
    assertThat(out.get("settled").kgps(Constituents.FIBRE)).isZero();
  }

  @Property
  void moreSpeedKeepsLessOnTheFloorWithoutAStep(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 8) double speed) {
    double step = 1e-6;
    double here = sandKept(floor(20, speed), THIN);
    double faster = sandKept(floor(20, speed + step), THIN);
    assertThat(faster).isLessThanOrEqualTo(here + 1e-9);
    assertThat(here - faster).isLessThan(1e-3);
  }

  /** Held up sand asks for more speed: substituted, that swings between all up and all down. */
  @Example
  void noSpeedKeepsMoreThanALowerOneOrFarLess() {
    double before = sandKept(floor(20, 0), THIN);
    for (double speed = 0.05; speed < 4; speed += 0.05) {
      double kept = sandKept(floor(20, speed), THIN);
      assertThat(kept).as("at %s 1/s", speed).isBetween(before - 0.12, before + 1e-9);
      before = kept;
    }
    assertThat(before).isZero();
  }

  @Example
  void aMixerThatSuspendsAllIsTheFullyMixedPitAndNoMixerLetsSandFall() {
    assertThat(sandKept(floor(20, 50), THIN)).isZero();
    assertThat(sandKept(floor(20, 0), THIN)).isEqualTo(sandKept(floor(20, -1), THIN));
    assertThat(sandKept(floor(20, -1), THIN)).isGreaterThan(0.8);
    Map<String, Stream> mixed = Plant.run(pit(floor(20, 50)), THIN);
    Map<String, Stream> plain =
        Plant.run(
            new Pit("pit", List.of("in"), Map.of("pumped", 1e-3), Optional.of("over"), 40, 60, 40),
            THIN);
    for (String name : plain.keySet()) {
      assertThat(mixed.get(name).toArray())
          .containsExactly(plain.get(name).toArray(), within(1e-15));
    }
  }

  @Example
  void theKeptShareIsThatOfOneMixedBasin() {
    SettlingFloor floor = floor(20, -1);
    // What the basin holds is what flows on: its feed less what settles.
    Map<String, Stream> out = Plant.run(pit(floor), THIN);
    Stream on = out.get("pumped").plus(out.get("over"));
    double[] falling = floor.fallingM3ps(on);
    double[] kept = floor.kept(THIN, THIN);
    for (int k = 0; k < falling.length; k++) {
      double y = falling[k] / on.volumeM3ps();
      assertThat(kept[Constituents.SAND + k]).isEqualTo(y / (1 + y), within(1e-5));
    }
    assertThat(falling[2]).isGreaterThan(falling[1]);
    assertThat(falling[1]).isGreaterThan(falling[0]);
  }

  @Example
  void settledSandTakesTheLiquorOfItsPores() {
    Stream settled = Plant.run(pit(floor(20, -1)), THIN).get("settled");
    double grains = settled.sandKgps() / 2650;
    double liquor = settled.volumeM3ps() - grains;
    assertThat(liquor / (liquor + grains)).isEqualTo(0.4, within(1e-6));
  }

  @Example
  void theDaysComeToTheSteadyBalanceOfAPitThatSettles() {
    Mode mode =
        new Mode(
            "only",
            Network.of(
                List.of(pit(floor(2, -1))), List.of("in"), List.of("pumped", "over", "settled")),
            Map.of("in", THIN));
    SteadyBalance rest = (SteadyBalance) mode.steadyState();
    DayRun run = Plant.always(mode).run(3, Map.of(), 60);
    Day last = run.last().orElseThrow();
    assertThat(run.days()).allMatch(day -> day.imbalance() < 1e-12);
    double atRest = rest.stream("settled").sandKgps();
    assertThat(last.meanFlows().get("settled").sandKgps()).isEqualTo(atRest, within(0.01 * atRest));
  }

  @Example
  void aGivenFloorKeepsItsSharesAtRestAndByTheDay() {
    GivenFloor given = new GivenFloor("settled", 0.9, 0.5, 0.3);
    Map<String, Stream> out = Plant.run(pit(given), THIN);
    assertThat(out.get("settled").sandKgps()).isEqualTo(0.9 * THIN.sandKgps(), within(1e-12));
    assertThat(out.get("settled").kgps(Constituents.FIBRE))
        .isEqualTo(0.5 * THIN.kgps(Constituents.FIBRE), within(1e-12));
    assertThat(out.get("settled").waterKgps()).isZero();
    Mode mode =
        new Mode(
            "only",
            Network.of(List.of(pit(given)), List.of("in"), List.of("pumped", "over", "settled")),
            Map.of("in", THIN));
    Day last = Plant.always(mode).run(3, Map.of(), 600).last().orElseThrow();
    assertThat(last.imbalance()).isLessThan(1e-12);
    assertThat(last.meanFlows().get("settled").sandKgps())
        .isEqualTo(0.9 * THIN.sandKgps(), within(1e-6));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new GivenFloor("settled", 0.9, 0.5, Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettlingFloor("settled", 0, 0.4, LIQUOR, Optional.empty()));
  }

  @Example
  void heldDownFallsFromOneAtRestToNoneAtTheJustSuspendedSpeed() {
    assertThat(PitMixing.heldDown(0, 5)).isEqualTo(1);
    assertThat(PitMixing.heldDown(2.5, 5)).isEqualTo(1 - 0.125, within(1e-12));
    assertThat(PitMixing.heldDown(5, 5)).isZero();
    assertThat(PitMixing.heldDown(0, 0)).isEqualTo(1);
    assertThat(PitMixing.heldDown(1, 0)).isZero();
  }

  @Example
  void aPumpThatIsLargerThanItsInflowTakesWhatComesInAShareOfTheTime() {
    Pit pit = new Pit("sump", List.of("in"), Map.of("out", 10.0), Optional.of("over"), 40, 60, 40);
    Network network = Network.of(List.of(pit), List.of("in"), List.of("out", "over"));
    SteadyBalance balance = (SteadyBalance) network.solve(Map.of("in", Plant.MANURE));
    assertThat(balance.notes()).isEmpty();
    assertThat(balance.stream("over").massKgps()).isZero();
    assertThat(balance.running().get("out"))
        .isEqualTo(Plant.MANURE.volumeM3ps() / 10, within(1e-12));
  }

  @Example
  void aUnitThatSwingsIsNamedFirstAmongThoseThatDoNotRest() {
    // It catches fibre only when there is little of it: neither way of running can last.
    Unit fickle =
        new Unit() {
          @Override
          public String name() {
            return "fickle";
          }

          @Override
          public List<String> inlets() {
            return List.of("in", "back");
          }

          @Override
          public List<String> outlets() {
            return List.of("out", "round");
          }

          @Override
          public Split split(Stream feed) {
            double[] first = new double[THREE.count()];
            java.util.Arrays.fill(first, 0.5);
            first[Constituents.FIBRE] =
                feed.kgps(Constituents.FIBRE) > 1.5 * Plant.MANURE.kgps(Constituents.FIBRE)
                    ? 0.9
                    : 0.3;
            return Split.two(first, List.of(SWINGS));
          }
        };
    Splitter still = Splitter.mixing("still", List.of("round"), "back");
    Network network = Network.of(List.of(fickle, still), List.of("in"), List.of("out"));
    NoSteadyState none = (NoSteadyState) network.solve(Map.of("in", Plant.MANURE));
    assertThat(none.reason()).isEqualTo(NoSteadyState.Reason.UNSETTLED);
    assertThat(none.units()).contains("fickle");
    assertThat(none.notes()).contains(SWINGS);
    assertThat(none.change()).isGreaterThan(1e-6);
  }
}
