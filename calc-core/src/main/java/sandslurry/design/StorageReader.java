package sandslurry.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import sandslurry.design.UnitSpec.PitSpec;
import sandslurry.design.UnitSpec.StorageSpec;
import sandslurry.plant.account.Pond;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.network.Pit;
import sandslurry.plant.unit.GivenFloor;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;

/** Reads storages, and the pools from which liquor is pumped back. */
final class StorageReader {
  private static final Limits<Length> WATER_DEPTH = Limits.of(Measure.LENGTH, "0 m", "5 m");
  private static final Limits<Dimensionless> SIDE_SLOPE = Limits.of(Measure.FRACTION, "0", "5");
  private static final Limits<Time> MONTH = Limits.of(Measure.TIME, "1 d", "366 d");
  private static final Limits<Length> RAIN = Limits.of(Measure.LENGTH, "0 mm", "2000 mm");

  private static final String SETTLING =
      "a storage that gives liquor back needs the share of these that settles in it";

  private final PlantConnections plant;

  StorageReader(PlantConnections plant) {
    this.plant = plant;
  }

  Optional<UnitSpec> storage(Section part, String name, List<String> in) {
    Map<String, Double> draws = new LinkedHashMap<>();
    List<Section> pumps = part.list("pumps");
    pumps.forEach(entry -> PitReader.pump(entry, draws));
    boolean recycles = !pumps.isEmpty();
    String pool = "Pool of " + name;
    String settles = PitSpec.settledIn(name);
    String stays = "stays in " + name;
    if (recycles) {
      List<String> out = new ArrayList<>(draws.keySet());
      out.addAll(List.of(stays, settles));
      plant.connect(part, pool, in, out);
    }
    List<String> kept = recycles ? List.of(settles, stays) : in;
    plant.connect(part, name, kept, List.of());
    Optional<Double> sand = part.si("sandSettling", DesignReader.SHARE, "100 %");
    OptionalDouble fibre = part.may("fibreSettling", DesignReader.SHARE);
    OptionalDouble fines = part.may("finesSettling", DesignReader.SHARE);
    OptionalDouble held = part.may("poolVolume", PlantLimits.PIT);
    for (String field : List.of("fibreSettling", "finesSettling")) {
      if (recycles && !part.has(field)) {
        part.problem(field, "is missing: " + SETTLING);
      }
    }
    Optional<Double> length = part.si("floorLength", PlantLimits.SIDE);
    Optional<Double> width = part.si("floorWidth", PlantLimits.SIDE);
    Optional<Double> side = part.si("sideSlope", SIDE_SLOPE, "0");
    Optional<Double> depth = part.si("depth", PlantLimits.DEPTH);
    Optional<Double> storm = part.si("storm", WATER_DEPTH, "0 mm");
    Optional<Double> freeboard = part.si("freeboard", WATER_DEPTH, "0.3 m");
    Optional<Double> settled = part.si("settledSand", PlantLimits.CONTENTS, "0 m3");
    List<Section> entries = part.list("months");
    if (entries.isEmpty()) {
      part.problem("months", "a storage needs the months of its year, or one entry of 365 d");
    }
    List<StorageAccount.Month> months = Section.all(entries, this::month);
    if (!Section.there(length, width, side, depth, storm, freeboard, settled)
        || months.size() < entries.size()) {
      return Optional.empty();
    }
    if (!(freeboard.get() < depth.get())) {
      part.problem("freeboard", "must be below the depth");
      return Optional.empty();
    }
    Pond pond = new Pond(length.get(), width.get(), side.get(), depth.get());
    if (recycles) {
      if (sand.isEmpty() || fibre.isEmpty() || fines.isEmpty() || draws.size() < pumps.size()) {
        return Optional.empty();
      }
      double full = held.orElse(pond.volumeM3() / 2);
      Optional<PitSpec> spec =
          part.built(
              "poolVolume",
              () ->
                  new PitSpec(
                      new Pit(pool, in, draws, Optional.of(stays), full, pond.volumeM3(), full),
                      Optional.empty(),
                      pond.areaM2(depth.get()),
                      Optional.of(
                          new GivenFloor(
                              settles, sand.get(), fibre.getAsDouble(), fines.getAsDouble()))));
      if (spec.isEmpty()) {
        return Optional.empty();
      }
      plant.add(spec.get());
    }
    return part.built(
        "depth",
        () ->
            new StorageSpec(name, kept, pond, months, storm.get(), freeboard.get(), settled.get()));
  }

  private Optional<StorageAccount.Month> month(Section part) {
    Optional<String> name = part.name("name", "the month");
    Optional<Double> days = part.si("length", MONTH);
    Optional<Double> rain = part.si("rain", RAIN, "0 mm");
    Optional<Double> evaporation = part.si("evaporation", RAIN, "0 mm");
    part.refuseUnknown();
    return Section.there(name, days, rain, evaporation)
        ? Optional.of(
            new StorageAccount.Month(
                name.get(), InUnit.days(days.get()), 0, rain.get(), evaporation.get()))
        : Optional.empty();
  }
}
