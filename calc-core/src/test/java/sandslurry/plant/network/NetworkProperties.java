package sandslurry.plant.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.plant.Constituents;
import sandslurry.plant.Plant;
import sandslurry.plant.Stream;
import sandslurry.plant.unit.CaptureLaw;
import sandslurry.plant.unit.GivenFloor;
import sandslurry.plant.unit.Liquor;
import sandslurry.plant.unit.LiquorModel;
import sandslurry.plant.unit.SettlingFloor;
import sandslurry.plant.unit.SolidsSeparator;
import sandslurry.tries.Slow;

class NetworkProperties {
  private static final LiquorModel LIQUOR =
      new LiquorModel(288.15, sandslurry.material.sand.GrainShape.NATURAL, 1);

  /** A unit with shares of its own for each constituent, which may shift with the solids. */
  private record RandomUnit(
      String name, List<String> inlets, List<String> outlets, double[][] weights, double drift)
      implements Unit {
    @Override
    public Split split(Stream feed) {
      int count = feed.constituents().count();
      double[][] shares = new double[outlets.size()][count];
      for (int i = 0; i < count; i++) {
        double sum = 0;
        for (int o = 0; o < shares.length; o++) {
          double bend = o == 0 ? 1 + drift * feed.totalSolids() : 1;
          shares[o][i] = weights[o][i] * bend;
          sum += shares[o][i];
        }
        for (double[] outlet : shares) {
          outlet[i] /= sum;
        }
      }
      return new Split(shares, List.of());
    }
  }

  private static final class RandomNetwork {
    private final Random random;
    private final List<Unit> units = new ArrayList<>();
    private final Map<String, Stream> feeds = new HashMap<>();
    private final List<String> products = new ArrayList<>();

    RandomNetwork(long seed, int size, double leak, double drift) {
      random = new Random(seed);
      List<List<String>> inlets = new ArrayList<>();
      List<List<String>> outlets = new ArrayList<>();
      for (int u = 0; u < size; u++) {
        inlets.add(new ArrayList<>());
        outlets.add(new ArrayList<>());
      }
      for (int u = 0; u < size; u++) {
        String feed = "feed " + u;
        inlets.get(u).add(feed);
        double[] flows = new double[THREE.count()];
        for (int i = 0; i < flows.length; i++) {
          flows[i] = random.nextInt(3) == 0 ? 0 : random.nextDouble();
        }
        flows[Constituents.WATER] = 0.1 + random.nextDouble();
        feeds.put(feed, Stream.of(THREE, flows));
        int ways = 1 + random.nextInt(3);
        for (int o = 0; o < ways; o++) {
          String stream = "stream " + u + "." + o;
          outlets.get(u).add(stream);
          if (random.nextDouble() < leak) {
            products.add(stream);
          } else {
            inlets.get(random.nextInt(size)).add(stream);
          }
        }
      }
      for (int u = 0; u < size; u++) {
        double[][] weights = new double[outlets.get(u).size()][THREE.count()];
        for (double[] outlet : weights) {
          for (int i = 0; i < outlet.length; i++) {
            outlet[i] = 0.05 + random.nextDouble();
          }
        }
        units.add(
            unit(
                new RandomUnit("unit " + u, inlets.get(u), outlets.get(u), weights, drift),
                random.nextInt(4)));
      }
    }

    /**
     * Some units become pits of which the last outlet is what settles, if they have two or more.
     */
    private Unit unit(RandomUnit plain, int kind) {
      int ways = plain.outlets().size();
      if (kind > 1 || ways < 2) {
        return plain;
      }
      String settled = plain.outlets().get(ways - 1);
      PitFloor floor =
          kind == 0
              ? new SettlingFloor(settled, 1e-4, 0.4, LIQUOR, java.util.Optional.empty())
              : new GivenFloor(settled, 0.9, 0.4, 0.2);
      Map<String, Double> draws = new java.util.LinkedHashMap<>();
      plain.outlets().subList(1, ways - 1).forEach(name -> draws.put(name, 1e-4));
      return new Pit(
          plain.name(),
          plain.inlets(),
          draws,
          java.util.Optional.of(plain.outlets().get(0)),
          1,
          2,
          1,
          PitLevels.usual(1),
          java.util.Optional.of(floor));
    }

    Network network() {
      return Network.of(units, feeds.keySet(), products);
    }

    /** Units from which a product can be reached, found without the code under test. */
    Set<String> open() {
      Set<String> open = new HashSet<>();
      for (int round = 0; round <= units.size(); round++) {
        for (Unit unit : units) {
          for (String outlet : unit.outlets()) {
            boolean out =
                products.contains(outlet)
                    || units.stream()
                        .anyMatch(to -> to.inlets().contains(outlet) && open.contains(to.name()));
            if (out) {
              open.add(unit.name());
            }
          }
        }
      }
      return open;
    }
  }

  @Slow(12)
  @Property(tries = 500)
  void everyConstituentIsConservedInEveryUnitOfEveryNetwork(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 9) int size,
      @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 0.7) double leak,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double drift) {
    RandomNetwork random = new RandomNetwork(seed, size, leak, drift);
    SteadyState state = random.network().solve(random.feeds);
    Set<String> open = random.open();
    if (state instanceof NoSteadyState none) {
      assertThat(none.units()).isNotEmpty();
      if (random.units.stream().noneMatch(Pit.class::isInstance)) {
        assertThat(none.reason()).isEqualTo(NoSteadyState.Reason.NO_PURGE);
        assertThat(none.units()).noneMatch(open::contains);
      }
      // What settles in a pit may have another way out than what does not, and pits in loops may
      // have no way of running together.
      return;
    }
    assertThat(open).hasSize(size);
    SteadyBalance balance = (SteadyBalance) state;
    for (int i = 0; i < THREE.count(); i++) {
      double in = 0;
      double out = 0;
      for (Stream feed : random.feeds.values()) {
        in += feed.kgps(i);
      }
      for (String product : random.products) {
        out += balance.stream(product).kgps(i);
      }
      assertThat(out).isEqualTo(in, within(1e-9 * in));
      for (Unit unit : random.units) {
        double into = 0;
        double outOf = 0;
        for (String inlet : unit.inlets()) {
          into += balance.stream(inlet).kgps(i);
        }
        for (String outlet : unit.outlets()) {
          outOf += balance.stream(outlet).kgps(i);
        }
        assertThat(outOf).isEqualTo(into, within(1e-9 * into));
      }
    }
    for (Unit unit : random.units) {
      Map<String, Stream> alone = Plant.run(unit, balance.feed(unit.name()));
      for (String outlet : unit.outlets()) {
        double[] given = balance.stream(outlet).toArray();
        double[] own = alone.get(outlet).toArray();
        for (int i = 0; i < own.length; i++) {
          assertThat(given[i]).isEqualTo(own[i], within(1e-8 * (1 + own[i])));
        }
      }
    }
  }

  @Property(tries = 200)
  void theRecycleRatioCancels(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.02) double recycleM3ps,
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 2) double wash,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.5) double capture) {
    // All sand, and of the rest a share of the fibre, is taken out; dry, so that no water goes with
    // it. What is left obeys the analytic limit.
    SolidsSeparator box =
        new SolidsSeparator(
            "box",
            List.of("manure", "wash", "recycle"),
            "sand",
            "overflow",
            CaptureLaw.fixed(new CaptureLaw.Captured(0, 0, 0, List.of(1.0, 1.0, 1.0), List.of())),
            1);
    SolidsSeparator fibre =
        new SolidsSeparator(
            "fibre separator",
            List.of("overflow"),
            "cake",
            "liquid",
            Plant.fibreOnly(capture, capture),
            1);
    Network network =
        Network.of(
            List.of(box, fibre, Plant.pit(recycleM3ps)),
            List.of("manure", "wash"),
            List.of("sand", "cake", "surplus"));
    SteadyBalance balance = Plant.balance(network, Plant.feeds(wash));
    double caught = balance.stream("cake").solidsKgps();
    double limit =
        Liquor.limit(Plant.MANURE.solidsKgps() - caught, Plant.MANURE.waterKgps() + wash);
    assertThat(balance.stream("liquid").totalSolids()).isEqualTo(limit, within(1e-9));
    if (capture == 0) {
      assertThat(balance.stream("surplus").solidsKgps())
          .isEqualTo(Plant.MANURE.solidsKgps(), within(1e-9));
    }
    double salts = Plant.MANURE.kgps(Constituents.DISSOLVED);
    double water = Plant.MANURE.waterKgps() + wash;
    assertThat(balance.stream("liquid").dissolvedShare())
        .isEqualTo(Liquor.limit(salts, water), within(1e-9));
  }

  @Property(tries = 200)
  void recyclingMoreOfAThickLiquidDilutesNothing(
      @ForAll @Scale(9) @DoubleRange(min = 0.0005, max = 0.01) double recycleM3ps,
      @ForAll @Scale(9) @DoubleRange(min = 1.05, max = 4) double more) {
    Network some = Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0, recycleM3ps);
    Network much = Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0, more * recycleM3ps);
    double before = Plant.balance(some, Plant.feeds(0.2)).stream("surplus").dissolvedShare();
    double after = Plant.balance(much, Plant.feeds(0.2)).stream("surplus").dissolvedShare();
    assertThat(after).isEqualTo(before, within(1e-10));
  }

  @Property(tries = 200)
  void moreFreshWaterThinsTheLiquor(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double wash,
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 2) double extra) {
    Network loop = Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0.5, 2e-3);
    assertThat(Plant.balance(loop, Plant.feeds(wash + extra)).stream("recycle").totalSolids())
        .isLessThan(Plant.balance(loop, Plant.feeds(wash)).stream("recycle").totalSolids());
  }
}
