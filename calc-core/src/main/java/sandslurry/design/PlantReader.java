package sandslurry.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Power;
import sandslurry.design.PlantSpec.ModeSpec;
import sandslurry.design.PlantSpec.PenSpec;
import sandslurry.design.PlantSpec.Product;
import sandslurry.design.PlantSpec.Use;
import sandslurry.design.PlantSpec.WaterSpec;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Range;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.pen.ManureProduction;
import sandslurry.plant.pen.ManureProductions;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;

/** Reads the part "plant" of a design, its units, pens, modes and accounts by their own readers. */
final class PlantReader {
  private static final Limits<Power> POWER = Limits.of(Measure.POWER, "0 kW", "2000 kW");

  private static final Map<String, ManureProduction> PRODUCTIONS =
      DesignReader.named(
          ManureProductions.all().toArray(ManureProduction[]::new), ManureProduction::id);

  private static final Map<String, Use> USES = DesignReader.named(Use.values(), Use::word);

  private PlantReader() {}

  static Optional<PlantSpec> read(Section part) {
    PlantConnections plant = new PlantConnections();
    ManureProduction production =
        part.choice("production", PRODUCTIONS).orElse(ManureProductions.DEFAULT);
    Optional<Double> dissolved = part.si("dissolvedShare", DesignReader.SHARE, "20 %");
    Optional<Double> fibre = part.si("fibreShare", DesignReader.SHARE, "54 %");
    Optional<ManureSolids> solids = Optional.empty();
    if (dissolved.isPresent() && fibre.isPresent()) {
      solids = part.built("fibreShare", () -> new ManureSolids(dissolved.get(), fibre.get()));
    }
    Optional<Double> coating = part.si("coatingFactor", DesignReader.COATING, "1");
    Optional<Double> porosity = part.si("porosity", PlantLimits.MOST_SHARE, "40 %");
    Optional<Double> rebedded = part.si("rebeddedShare", DesignReader.SHARE, "95 %");
    List<Section> penParts = part.list("pens");
    if (penParts.isEmpty()) {
      part.problem("pens", "a plant needs one pen or more");
    }
    PenReader penReader = new PenReader(plant);
    List<PenSpec> pens = Section.all(penParts, penReader::pen);
    List<Section> waterParts = part.list("waters");
    List<WaterSpec> waters = Section.all(waterParts, PlantReader::water);
    List<Section> parts = part.list("units");
    if (parts.isEmpty()) {
      part.problem("units", "a plant needs one unit or more");
    }
    UnitReader units = new UnitReader(plant);
    parts.forEach(entry -> units.unit(entry).ifPresent(plant::add));
    List<Section> productParts = part.list("products");
    List<Product> products = Section.all(productParts, PlantReader::product);
    List<Section> modeParts = part.list("modes");
    List<ModeSpec> modes = Section.all(modeParts, ModeReader::mode);
    List<EnergyUse> machines = Section.all(part.list("machines"), PlantReader::machine);
    AccountingReader accounts = new AccountingReader(part);
    Optional<PlantSpec.Targets> targets = accounts.targets();
    Optional<PlantSpec.Accounting> accounting = accounts.accounting();
    part.refuseUnknown();
    if (!parts.isEmpty() && !penParts.isEmpty()) {
      plant.check(part, pens, waters, products);
    }
    if (pens.size() == penParts.size()) {
      penReader.checkFlushWaters(penParts, pens, waters);
    }
    if (modes.size() == modeParts.size()) {
      ModeReader.check(modeParts, modes, plant.settable(waters), part);
    }
    if (!Section.there(solids, coating, porosity, rebedded, targets, accounting)) {
      return Optional.empty();
    }
    List<ModeSpec> day =
        modes.isEmpty() ? List.of(new ModeSpec("all day", 0, InUnit.ofDays(1), Map.of())) : modes;
    return Optional.of(
        new PlantSpec(
            production,
            solids.get(),
            coating.get(),
            porosity.get(),
            pens,
            waters,
            plant.units(),
            products,
            day,
            machines,
            rebedded.get(),
            targets.get(),
            accounting.get()));
  }

  private static Optional<WaterSpec> water(Section part) {
    Optional<String> stream = part.name("stream", "the stream of water");
    Optional<Double> flow = part.si("flow", PlantLimits.WATER);
    OptionalDouble most = part.may("most", PlantLimits.WATER);
    part.refuseUnknown();
    return Section.there(stream, flow)
        ? Optional.of(new WaterSpec(stream.get(), flow.get(), most))
        : Optional.empty();
  }

  private static Optional<Product> product(Section part) {
    Optional<String> stream = part.name("stream", "a stream that leaves the plant");
    Optional<Use> use = part.requiredChoice("use", USES);
    part.refuseUnknown();
    return Section.there(stream, use)
        ? Optional.of(new Product(stream.get(), use.get()))
        : Optional.empty();
  }

  private static Optional<EnergyUse> machine(Section part) {
    Optional<String> name = part.name("name", "the machine");
    Optional<Range> power = part.range("power", POWER, "0 kW");
    if (!part.has("power")) {
      part.problem("power", "is missing: a power is needed");
    }
    Optional<Double> share = part.runningShare();
    part.refuseUnknown();
    return Section.there(name, power, share)
        ? Optional.of(new EnergyUse(name.get(), power.get(), share.get()))
        : Optional.empty();
  }
}
