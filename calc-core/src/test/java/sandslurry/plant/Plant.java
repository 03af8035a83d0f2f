package sandslurry.plant;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.Network;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.Unit;
import sandslurry.plant.schedule.DaySchedule;
import sandslurry.plant.unit.CaptureLaw;
import sandslurry.plant.unit.SolidsSeparator;
import sandslurry.units.InUnit;

/** An invented plant for tests: box, fibre separator, pit, with the liquid back as dilution. */
public final class Plant {
  public static final Constituents THREE =
      new Constituents(
          998,
          1450,
          2650,
          List.of(
              new SizeClass(0.075e-3, 0.15e-3, 0.106e-3, 0.2),
              new SizeClass(0.15e-3, 0.6e-3, 0.3e-3, 0.5),
              new SizeClass(0.6e-3, 2.4e-3, 1.2e-3, 0.3)),
          0.03);

  /** Sand-laden manure of some 500 cows: 12.8 % sand-free solids, a quarter sand by mass. */
  public static final Stream MANURE =
      Stream.liquor(THREE, 0.39, 0.128, ManureSolids.FRESH).plus(THREE.deliveredSand(0.13));

  private Plant() {}

  /** Dry matter with sand over total mass, as a laboratory finds it that leaves the sand in. */
  public static double totalSolidsWithSand(Stream stream) {
    return (stream.solidsKgps() + stream.sandKgps()) / stream.massKgps();
  }

  /** What a unit alone makes of its feeds, by name of the outlet. */
  public static Map<String, Stream> run(Unit unit, Stream... feeds) {
    Stream feed = Stream.mix(feeds[0].constituents(), List.of(feeds));
    Split split = unit.split(feed);
    Map<String, Stream> out = new LinkedHashMap<>();
    for (int i = 0; i < unit.outlets().size(); i++) {
      out.put(unit.outlets().get(i), split.outlet(feed, i));
    }
    return out;
  }

  /** A day of one mode. */
  public static DaySchedule always(Mode mode) {
    return DaySchedule.of(List.of(new DaySchedule.Period(mode, 0, InUnit.DAY.si(1))), Map.of());
  }

  public static CaptureLaw sandOnly(double fine, double middle, double coarse) {
    return CaptureLaw.fixed(
        new CaptureLaw.Captured(0, 0, 0.1, List.of(fine, middle, coarse), List.of()));
  }

  public static CaptureLaw fibreOnly(double fibre, double fines) {
    return CaptureLaw.fixed(
        new CaptureLaw.Captured(fibre, fines, fines, List.of(0.0, 0.0, 0.0), List.of()));
  }

  public static SolidsSeparator box(CaptureLaw law) {
    return new SolidsSeparator(
        "box", List.of("manure", "wash", "recycle"), "sand", "overflow", law, 0.85);
  }

  public static SolidsSeparator fibre(double capture) {
    return new SolidsSeparator(
        "fibre separator", List.of("overflow"), "cake", "liquid", fibreOnly(capture, 0.1), 0.28);
  }

  /** Pit of which a pump takes the recycle and the rest runs to storage. */
  public static Pit pit(double recycleM3ps) {
    return new Pit(
        "pit",
        List.of("liquid"),
        Map.of("recycle", recycleM3ps),
        Optional.of("surplus"),
        40,
        60,
        40);
  }

  public static Network loop(CaptureLaw sand, double fibre, double recycleM3ps) {
    return Network.of(
        List.of(box(sand), fibre(fibre), pit(recycleM3ps)),
        List.of("manure", "wash"),
        List.of("sand", "cake", "surplus"));
  }

  public static Map<String, Stream> feeds(double washKgps) {
    Map<String, Stream> feeds = new LinkedHashMap<>();
    feeds.put("manure", MANURE);
    feeds.put("wash", THREE.water(washKgps));
    return feeds;
  }

  public static SteadyBalance balance(Network network, Map<String, Stream> feeds) {
    if (network.solve(feeds) instanceof SteadyBalance balance) {
      return balance;
    }
    throw new AssertionError(network.solve(feeds).toString());
  }
}
