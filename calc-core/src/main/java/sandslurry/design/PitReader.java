package sandslurry.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import sandslurry.design.UnitSpec.Mixer;
import sandslurry.design.UnitSpec.PitSpec;
import sandslurry.plant.network.Pit;
import sandslurry.separation.pit.Impeller;
import sandslurry.units.Measure;

/** Reads pits with their pumps and mixers. */
final class PitReader {
  private static final Limits<Dimensionless> NUMBER = Limits.of(Measure.FRACTION, "0.05", "50");
  private static final Limits<Frequency> MIXER_SPEED =
      Limits.of(Measure.FREQUENCY, "0 rpm", "3000 rpm");

  private static final Map<String, Impeller.Kind> IMPELLERS =
      DesignReader.named(
          Impeller.Kind.values(), kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' '));

  private final PlantConnections plant;

  PitReader(PlantConnections plant) {
    this.plant = plant;
  }

  Optional<UnitSpec> pit(Section part, String name, List<String> in) {
    Map<String, Double> draws = new LinkedHashMap<>();
    List<Section> entries = part.list("pumps");
    entries.forEach(entry -> pump(entry, draws));
    Optional<String> overflow =
        part.has("overflow")
            ? Optional.of(part.nameOrBlank("overflow", "the stream over the weir"))
            : Optional.empty();
    if (entries.isEmpty() && overflow.isEmpty()) {
      part.problem("pumps", "is missing: a pit needs a pump or an \"overflow\"");
    }
    List<String> out = new ArrayList<>(draws.keySet());
    overflow.ifPresent(out::add);
    out.add(PitSpec.settledIn(name));
    plant.digOut(PitSpec.settledIn(name));
    plant.connect(part, name, in, out);
    Optional<Double> depth = part.si("depth", PlantLimits.DEPTH, "3 m");
    Optional<Double> capacity = part.si("capacity", PlantLimits.PIT);
    OptionalDouble weir = part.may("weirVolume", PlantLimits.PIT);
    OptionalDouble start = part.may("startVolume", PlantLimits.CONTENTS);
    Optional<Mixer> mixer = part.part("mixer").flatMap(this::mixer);
    if (capacity.isEmpty() || depth.isEmpty() || draws.size() < entries.size()) {
      return Optional.empty();
    }
    if (overflow.isPresent() && !part.has("weirVolume")) {
      part.problem("weirVolume", "is missing: the volume up to the overflow");
      return Optional.empty();
    }
    double full = weir.orElse(capacity.get());
    if (overflow.isPresent() && full == capacity.get()) {
      part.problem("weirVolume", "must be below the capacity: else the brim is the overflow");
      return Optional.empty();
    }
    return part.built(
        "capacity",
        () ->
            new PitSpec(
                new Pit(name, in, draws, overflow, full, capacity.get(), start.orElse(full)),
                mixer,
                capacity.get() / depth.get(),
                Optional.empty()));
  }

  /** The pumps of a pit or a storage: streams and flows. */
  static void pump(Section entry, Map<String, Double> draws) {
    String stream = entry.nameOrBlank("stream", "the stream that is pumped");
    Optional<Double> flow = entry.si("flow", PlantLimits.WATER);
    entry.refuseUnknown();
    if (draws.containsKey(stream)) {
      entry.problem("stream", "another pump of this pit has this stream");
    }
    flow.ifPresent(f -> draws.put(stream, f));
  }

  private Optional<Mixer> mixer(Section part) {
    Optional<Double> diameter = part.si("diameter", PlantLimits.DEPTH);
    Optional<Double> speed = part.si("speed", MIXER_SPEED);
    Impeller.Kind kind = part.choice("impeller", IMPELLERS).orElse(Impeller.Kind.PROPELLER);
    OptionalDouble suspension = part.may("suspensionNumber", NUMBER);
    OptionalDouble power = part.may("powerNumber", NUMBER);
    Optional<Double> share = part.runningShare();
    part.refuseUnknown();
    if (!Section.there(diameter, speed, share)) {
      return Optional.empty();
    }
    Impeller usual = kind.of(diameter.get());
    return Optional.of(
        new Mixer(
            new Impeller(
                diameter.get(),
                suspension.orElse(usual.suspensionNumber()),
                power.orElse(usual.powerNumber())),
            speed.get(),
            share.get()));
  }
}
