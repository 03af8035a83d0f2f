package sandslurry.plant.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.sand.GrainShape;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Plant;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.Network;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.PitFloor;
import sandslurry.plant.network.PitLevels;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.SteadyState;
import sandslurry.plant.network.Unit;
import sandslurry.plant.unit.CaptureLaw;
import sandslurry.plant.unit.LiquorModel;
import sandslurry.plant.unit.SettlingFloor;
import sandslurry.plant.unit.SolidsSeparator;
import sandslurry.plant.unit.Splitter;
import sandslurry.plant.unit.Under;
import sandslurry.separation.box.DilutionBox;

/** The balance at rest is what days of a plant that was filled with water come to. */
class RestProperties {
  private static final LiquorModel LIQUOR = new LiquorModel(288.15, GrainShape.NATURAL, 1);

  /** Stages one after the other, with recycles to stages before them. */
  static final class RandomPlant {
    private final Random random;
    private final List<Supplier<Unit>> units = new ArrayList<>();
    private final List<List<String>> inlets = new ArrayList<>();
    final Map<String, Stream> feeds = new LinkedHashMap<>();
    final List<String> products = new ArrayList<>();

    RandomPlant(long seed) {
      random = new Random(seed);
      int stages = 2 + random.nextInt(5);
      for (int s = 0; s < stages; s++) {
        inlets.add(new ArrayList<>());
      }
      int pens = 1 + random.nextInt(3);
      double all = 0;
      for (int p = 0; p < pens; p++) {
        double flow = 0.1 + random.nextDouble();
        all += flow;
        feed(
            p == 0 ? 0 : random.nextInt(stages),
            "manure " + p,
            Stream.liquor(THREE, flow, 0.04 + 0.08 * random.nextDouble(), ManureSolids.FRESH)
                .plus(THREE.deliveredSand(flow * 0.5 * random.nextDouble())));
      }
      double wash = random.nextInt(3) == 0 ? 0 : 2 * random.nextDouble();
      all += wash;
      feed(0, "wash", THREE.water(wash));
      for (int s = 0; s < stages; s++) {
        stage(s, stages, all / 1000);
      }
    }

    private void feed(int stage, String name, Stream stream) {
      inlets.get(stage).add(name);
      feeds.put(name, stream);
    }

    private void to(int stage, int stages, String name) {
      if (stage < stages) {
        inlets.get(stage).add(name);
      } else {
        products.add(name);
      }
    }

    private void stage(int s, int stages, double flowM3ps) {
      String on = "on " + s;
      String solids = "solids " + s;
      String back = "back " + s;
      List<String> in = inlets.get(s);
      String name = "unit " + s;
      switch (random.nextInt(5)) {
        case 0 -> {
          boolean recycles = s > 0 && random.nextBoolean();
          List<String> out = recycles ? List.of(on, back) : List.of(on);
          double share = 0.7 * random.nextDouble();
          units.add(
              () ->
                  new Splitter(name, in, out, recycles ? List.of(1 - share, share) : List.of(1.0)));
          to(s + 1, stages, on);
          if (recycles) {
            to(random.nextInt(s), stages, back);
          }
        }
        case 1 -> {
          products.add(solids);
          to(s + 1, stages, on);
          double k = 30 * random.nextDouble();
          double fibre = random.nextDouble();
          CaptureLaw law =
              feed -> {
                double thin = Math.exp(-k * feed.manureTotalSolids());
                return new CaptureLaw.Captured(
                    fibre, 0.2 * fibre, 0.1, List.of(0.3 * thin, 0.9 * thin, thin), List.of());
              };
          units.add(() -> new SolidsSeparator(name, in, solids, on, law, 0.3));
        }
        case 2 -> {
          products.add(solids);
          to(s + 1, stages, on);
          double area = 1 + 9 * random.nextDouble();
          units.add(
              () ->
                  Under.box(
                      name,
                      in,
                      solids,
                      on,
                      new DilutionBox(area, 1, 1, 0.18, 0, 0.6, OptionalDouble.empty(), 0.45),
                      LIQUOR,
                      10));
        }
        default -> pit(s, stages, flowM3ps, on, back);
      }
    }

    private void pit(int s, int stages, double flowM3ps, String on, String back) {
      String name = "unit " + s;
      double capacity = Math.pow(10, 2.7 * random.nextDouble());
      boolean weir = random.nextBoolean();
      Map<String, Double> draws = new LinkedHashMap<>();
      if (random.nextBoolean()) {
        draws.put(back, flowM3ps * Math.pow(10, random.nextDouble() - 0.5));
        to(random.nextInt(s + 1), stages, back);
      }
      draws.put(on, flowM3ps * Math.pow(10, 1.5 * random.nextDouble() - 0.5));
      to(s + 1, stages, on);
      Optional<String> over = weir ? Optional.of("over " + s) : Optional.empty();
      if (weir) {
        to(random.nextBoolean() ? s + 1 : stages, stages, "over " + s);
      } else {
        products.add(Pit.spilledFrom(name));
      }
      double full = weir ? 0.8 * capacity : capacity;
      Optional<PitFloor> floor =
          random.nextBoolean()
              ? Optional.of(
                  new SettlingFloor("settled " + s, capacity / 3, 0.4, LIQUOR, Optional.empty()))
              : Optional.empty();
      floor.ifPresent(f -> products.add(f.stream()));
      double start = full * random.nextDouble();
      units.add(
          () ->
              new Pit(
                  name,
                  inlets.get(s),
                  draws,
                  over,
                  full,
                  capacity,
                  start,
                  PitLevels.usual(full),
                  floor));
    }

    Mode mode() {
      return new Mode(
          "only",
          Network.of(units.stream().map(Supplier::get).toList(), feeds.keySet(), products),
          feeds);
    }
  }

  private static boolean thinnerThanMeasured(SteadyState state) {
    return !(state instanceof SteadyBalance rest)
        || rest.feeds().values().stream()
            .allMatch(feed -> feed.manureTotalSolids() < 0.98 * Carriers.HIGHEST_TOTAL_SOLIDS);
  }

  @Property(tries = 60)
  void daysComeToTheBalanceAtRest(@ForAll long seed) {
    RandomPlant plant = new RandomPlant(seed);
    Mode mode = plant.mode();
    SteadyState state = mode.steadyState();
    DayRun run = Plant.always(mode).run(100, Map.of(), 3600);
    assertThat(run.stopped()).isEmpty();
    // Where liquor stands at the thickest whose flow was measured settling stops at once: no rest.
    Assume.that(run.days().size() < 100 && thinnerThanMeasured(state));
    assertThat(run.days()).allMatch(day -> day.imbalance() < 1e-9);
    assertThat(state).isInstanceOf(SteadyBalance.class);
    SteadyBalance rest = (SteadyBalance) state;
    assertThat(rest.imbalance()).isLessThan(1e-9);
    Day last = run.last().orElseThrow();
    double in = plant.feeds.values().stream().mapToDouble(Stream::massKgps).sum();
    double sand = plant.feeds.values().stream().mapToDouble(Stream::sandKgps).sum();
    rest.streams()
        .forEach(
            (name, stream) -> {
              Stream day = last.meanFlows().get(name);
              if (stream.massKgps() > 0.002 * in) {
                assertThat(day.massKgps())
                    .as(name)
                    .isEqualTo(stream.massKgps(), within(0.01 * stream.massKgps()));
              }
              if (plant.products.contains(name)) {
                assertThat(day.sandKgps()).isEqualTo(stream.sandKgps(), within(0.005 * sand));
              }
            });
  }
}
