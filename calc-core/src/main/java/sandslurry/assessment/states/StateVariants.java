package sandslurry.assessment.states;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.design.Design;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.OtherPumpSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.design.station.ServiceSpec.Ends;
import sandslurry.design.station.ServiceSpec.StatesSpec;

/** The states beside its flows in which the line of a design is to be evaluated. */
public final class StateVariants {
  private static final String FLUSH = "flush with water";

  private final Design design;
  private final StatesSpec spec;
  private final boolean sandThere;
  private final OptionalDouble worn;
  private final List<StateVariant> all = new ArrayList<>();

  /**
   * The states of a design.
   *
   * @param sandThere whether its line carries sand
   */
  StateVariants(Design design, boolean sandThere) {
    this.design = design;
    this.spec = design.service().states().orElse(StatesSpec.NONE);
    this.sandThere = sandThere;
    double share = spec.wornHead().orElse(0.0);
    this.worn = share > 0 || oneWears(design) ? OptionalDouble.of(share) : OptionalDouble.empty();
    list();
  }

  /** The share that wear takes of pumps without one of their own; empty when none wears. */
  OptionalDouble worn() {
    return worn;
  }

  List<StateVariant> all() {
    return all;
  }

  /**
   * Whether a state is the flush with water.
   *
   * @param state a state of the line
   * @return true for the flush
   */
  public static boolean isFlush(StateResult state) {
    return state.name().equals(FLUSH);
  }

  /**
   * Name of the state in which a spare pump replaces the first.
   *
   * @param spare the spare pump
   * @return the name
   */
  public static String spareName(OtherPumpSpec spare) {
    return spare.name() + " for pump 1";
  }

  private StateVariant named(String name) {
    return StateVariant.named(name, design);
  }

  private void add(StateVariant state) {
    all.add(state);
  }

  private void list() {
    ends(spec.solids(), "thickest liquor", "thinnest liquor", StateVariant::withSolids);
    ends(spec.temperatureK(), "coldest", "warmest", StateVariant::withTemperature);
    ends(spec.thickness(), "thickest liquor", "thinnest liquor", StateVariant::with);
    ends(spec.cold(), "coldest", "warmest", StateVariant::with);
    ends(spec.sand(), "most sand", "least sand", StateVariant::withSand);
    ends(spec.sourceLevelM(), "pit at its lowest", "pit at its highest", StateVariant::withLevel);
    if (worn.isPresent()) {
      add(named(word() + " worn").withWear(worn.getAsDouble()));
    }
    Optional<RotodynamicSpec> pumps = design.pump().flatMap(PumpSpec::rotodynamic);
    boolean derated = pumps.isPresent() && sandThere;
    if (derated && design.service().states().isPresent()) {
      add(named(ServiceResult.LEAST_STATE).believingSeverest());
    }
    Optional<StateVariant> worst = together(derated);
    worst.ifPresent(this::add);
    if (spec.flushWater()) {
      add(named(FLUSH).withWater());
    }
    pumps.ifPresent(pump -> stations(pump, worst));
  }

  private <T> void ends(
      Ends<T> ends, String hard, String easy, BiFunction<StateVariant, T, StateVariant> with) {
    ends.hard().ifPresent(end -> add(with.apply(named(hard), end)));
    ends.easy().ifPresent(end -> add(with.apply(named(easy), end)));
  }

  /** Says whether a pump that runs has a share of wear of its own. */
  private static boolean oneWears(Design design) {
    return design.pump().flatMap(PumpSpec::rotodynamic).stream()
        .flatMap(spec -> spec.pumps().stream())
        .flatMap(p -> p.wornHead().stream())
        .anyMatch(share -> share > 0);
  }

  String word() {
    return design
        .pump()
        .flatMap(PumpSpec::rotodynamic)
        .filter(pump -> pump.names().size() > 1)
        .map(several -> "pumps")
        .orElse("pump");
  }

  /**
   * What takes flow, all at once, with the derating for sand that takes most head; nothing when
   * fewer than two such things are given.
   */
  private Optional<StateVariant> together(boolean derated) {
    List<String> given = new ArrayList<>();
    if (spec.solids().hard().isPresent() || spec.thickness().hard().isPresent()) {
      given.add("thickest liquor");
    }
    // Two liquids with numbers of their own cannot be one: the thickest goes before the coldest.
    if (spec.temperatureK().hard().isPresent()
        || spec.cold().hard().isPresent() && spec.thickness().hard().isEmpty()) {
      given.add("coldest");
    }
    spec.sand().hard().ifPresent(s -> given.add("most sand"));
    spec.sourceLevelM().hard().ifPresent(l -> given.add("lowest pit"));
    worn.ifPresent(share -> given.add("worn"));
    if (given.size() < 2) {
      return Optional.empty();
    }
    if (derated) {
      given.add("most derated");
    }
    StateVariant worst = named(String.join(", ", given));
    Optional<CarrierSpec> liquid = spec.thickness().hard().or(spec.cold()::hard);
    worst = liquid.map(worst::with).orElse(worst);
    worst = spec.solids().hard().map(worst::withSolids).orElse(worst);
    worst = spec.temperatureK().hard().map(worst::withTemperature).orElse(worst);
    worst = spec.sand().hard().map(worst::withSand).orElse(worst);
    worst = spec.sourceLevelM().hard().map(worst::withLevel).orElse(worst);
    worst = worn.isPresent() ? worst.withWear(worn.getAsDouble()) : worst;
    return Optional.of(derated ? worst.believingSeverest() : worst);
  }

  /** One pump out of several, and the spare in the place of the first. */
  private void stations(RotodynamicSpec pump, Optional<StateVariant> worst) {
    List<RunningPump> pumps = pump.pumps();
    if (pumps.size() > 1) {
      for (int i = 0; i < pumps.size(); i++) {
        // Of pumps like the first, one stands for all.
        if (i == 0 || i >= pump.station().count()) {
          List<RunningPump> others = new ArrayList<>(pumps);
          others.remove(i);
          add(named("without " + pumps.get(i).name()).withPumps(others));
        }
      }
    }
    for (OtherPumpSpec spare : pump.spares()) {
      List<RunningPump> with = pump.withSpare(spare);
      add(named(spareName(spare)).withPumps(with));
      worst.ifPresent(
          state -> add(state.called(spareName(spare) + ", worst together").withPumps(with)));
    }
  }
}
