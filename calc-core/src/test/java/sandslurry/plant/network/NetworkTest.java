package sandslurry.plant.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sandslurry.plant.Constituents;
import sandslurry.plant.Plant;
import sandslurry.plant.Stream;
import sandslurry.plant.account.Remedy;
import sandslurry.plant.unit.CaptureLaw;
import sandslurry.plant.unit.Splitter;

class NetworkTest {
  @Test
  void allProblemsAreToldAtOnce() {
    List<Unit> units =
        List.of(
            Splitter.mixing("a", List.of("feed", "ghost"), "out"),
            Splitter.mixing("a", List.of("feed"), "lost"));
    assertThat(Network.problems(units, List.of("feed", "idle"), List.of("out", "missing")))
        .hasSize(6)
        .anyMatch(p -> p.equals("the name \"a\" is given to two units"))
        .anyMatch(p -> p.contains("\"ghost\" flows into \"a\" but nothing makes it"))
        .anyMatch(p -> p.contains("\"lost\" leaves \"a\" but no unit takes it"))
        .anyMatch(p -> p.contains("\"feed\" goes to \"a\" and \"a\""))
        .anyMatch(p -> p.contains("\"idle\" leaves the feeds but no unit takes it"))
        .anyMatch(p -> p.contains("\"missing\" flows into the products but nothing makes it"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Network.of(units, List.of("feed"), List.of("out")));
    assertThat(Network.problems(List.of(), List.of(), List.of())).hasSize(2);
  }

  @Test
  void aLoopWithoutPurgeIsNamedWithItsConstituent() {
    // Water evaporates, everything else goes round.
    Unit pan =
        new Unit() {
          @Override
          public String name() {
            return "pan";
          }

          @Override
          public List<String> inlets() {
            return List.of("feed", "back");
          }

          @Override
          public List<String> outlets() {
            return List.of("vapour", "brine");
          }

          @Override
          public Split split(Stream feed) {
            double[] vapour = new double[feed.constituents().count()];
            vapour[Constituents.WATER] = 0.4;
            return Split.two(vapour, List.of());
          }
        };
    Network network =
        Network.of(
            List.of(pan, Splitter.mixing("pump", List.of("brine"), "back")),
            List.of("feed"),
            List.of("vapour"));
    Stream salty = Stream.of(THREE, 10, 1, 0, 0, 0, 0, 0, 0);
    assertThat(network.solve(Map.of("feed", salty)))
        .isInstanceOfSatisfying(
            NoSteadyState.class,
            none -> {
              assertThat(none.reason()).isEqualTo(NoSteadyState.Reason.NO_PURGE);
              assertThat(none.grows().constituent()).isEqualTo("dissolved solids");
              assertThat(none.units()).containsExactly("pan", "pump");
              assertThat(none.grows().kgps()).isEqualTo(1, within(1e-12));
            });
    // The same loop fed with pure water is at rest: what does not come in cannot pile up.
    SteadyBalance pure = Plant.balance(network, Map.of("feed", THREE.water(10)));
    assertThat(pure.stream("vapour").waterKgps()).isEqualTo(10, within(1e-12));
    assertThat(pure.stream("brine").waterKgps()).isEqualTo(15, within(1e-12));
  }

  /** Sends one share of its feed back to itself while it sees little, another when it sees much. */
  private static Network swing(double little, double much, double fromKgps) {
    Unit swing =
        new Unit() {
          @Override
          public String name() {
            return "switch";
          }

          @Override
          public List<String> inlets() {
            return List.of("feed", "back");
          }

          @Override
          public List<String> outlets() {
            return List.of("back", "out");
          }

          @Override
          public Split split(Stream feed) {
            double[] back = new double[feed.constituents().count()];
            java.util.Arrays.fill(back, feed.massKgps() < fromKgps ? little : much);
            return Split.two(back, List.of());
          }
        };
    return Network.of(List.of(swing), List.of("feed"), List.of("out"));
  }

  @Test
  void unitsThatDoNotAgreeWithTheirFeedsAreNotCalledSteady() {
    Map<String, Stream> feeds = Map.of("feed", THREE.water(1));
    SteadyBalance before = Plant.balance(swing(0.5, 0.5, 1), feeds);
    Network swings = swing(0.5, 0.1, 1.5);
    for (SteadyState none : List.of(swings.solve(feeds), swings.solve(feeds, before))) {
      assertThat(none)
          .isInstanceOfSatisfying(
              NoSteadyState.class,
              state -> assertThat(state.reason()).isEqualTo(NoSteadyState.Reason.UNSETTLED));
    }
  }

  /** At rest 2.008 kg/s would pass and send back less, 2 kg/s and send back more. */
  @Test
  void unitsThatNearlyAgreeAreSteadyWithinTheirJump() {
    Map<String, Stream> feeds = Map.of("feed", THREE.water(1));
    SteadyBalance before = Plant.balance(swing(0.5, 0.5, 1), feeds);
    Network jumps = swing(0.502, 0.5, 2.004);
    for (SteadyState state : List.of(jumps.solve(feeds), jumps.solve(feeds, before))) {
      assertThat(state)
          .isInstanceOfSatisfying(
              SteadyBalance.class,
              balance -> {
                assertThat(balance.stream("out").massKgps()).isEqualTo(1, within(1e-12));
                assertThat(balance.feed("switch").massKgps()).isBetween(2.0 - 1e-9, 2.0081);
                assertThat(balance.passes()).isLessThan(100);
              });
    }
  }

  @Test
  void aPumpThatIsLargerThanWhatComesInRunsForAShareOfTheTime() {
    Pit pit = new Pit("sump", List.of("in"), Map.of("pumped", 0.002), Optional.of("over"), 5, 6, 5);
    Network network = Network.of(List.of(pit), List.of("in"), List.of("pumped", "over"));
    SteadyBalance enough = Plant.balance(network, Map.of("in", THREE.water(4 * 0.998)));
    assertThat(enough.stream("pumped").volumeM3ps()).isEqualTo(0.002, within(1e-12));
    assertThat(enough.stream("over").volumeM3ps()).isEqualTo(0.002, within(1e-12));
    assertThat(enough.notes()).isEmpty();
    SteadyBalance little = Plant.balance(network, Map.of("in", THREE.water(0.998)));
    assertThat(little.stream("pumped").volumeM3ps()).isEqualTo(0.001, within(1e-12));
    assertThat(little.running().get("pumped")).isEqualTo(0.5, within(1e-12));
    assertThat(enough.running().get("pumped")).isEqualTo(1, within(1e-12));
  }

  @Test
  void thickLiquorSettlesLessSandAndTheLoopFindsItsBalance() {
    // Sand caught falls with the solids of the feed: the outer passes have work to do.
    CaptureLaw thinning =
        feed -> {
          double factor = Math.exp(-20 * feed.manureTotalSolids());
          return new CaptureLaw.Captured(
              0.02, 0, 0.1, List.of(0.6 * factor, 0.95 * factor, factor), List.of());
        };
    Network network = Plant.loop(thinning, 0.5, 1.5e-3);
    SteadyBalance dry = Plant.balance(network, Plant.feeds(0.05));
    SteadyBalance wet = Plant.balance(network, Plant.feeds(0.6));
    assertThat(dry.passes()).isGreaterThan(2);
    assertThat(dry.imbalance()).isLessThan(1e-9);
    assertThat(wet.stream("recycle").totalSolids()).isLessThan(dry.stream("recycle").totalSolids());
    assertThat(wet.stream("sand").sandKgps()).isGreaterThan(dry.stream("sand").sandKgps());
    double target = 0.5 * (wet.stream("sand").sandKgps() + dry.stream("sand").sandKgps());
    double water =
        Remedy.least(
                "wash water",
                extra ->
                    Plant.balance(network, Plant.feeds(0.05 + extra)).stream("sand").sandKgps(),
                target,
                1)
            .orElseThrow();
    assertThat(water).isBetween(0.01, 0.55);
    assertThat(Plant.balance(network, Plant.feeds(0.05 + water)).stream("sand").sandKgps())
        .isEqualTo(target, within(1e-9));
    assertThat(Remedy.least("wash water", extra -> 0.1, 1, 5)).isEmpty();
    assertThat(Remedy.least("wash water", extra -> 2, 1, 5)).hasValue(0);
  }

  @Test
  void strangeFeedsAreRefused() {
    Network network = Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0.5, 1e-3);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> network.solve(Map.of("manure", Plant.MANURE)))
        .withMessageContaining("wash");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Plant.balance(network, Plant.feeds(0.1)).stream("nonsense"))
        .withMessageContaining("nonsense");
  }
}
