package sandslurry.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.plant.Figure;
import sandslurry.plant.unit.Care;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.report.block.Block;
import sandslurry.report.block.Told;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What who runs a plant looks at, unit by unit: daily, monthly, what shows that it goes wrong, when
 * to clean. The numbers are those of the design; what to look at is common practice, no source.
 */
final class OperationSheet {
  private final PlantSpec spec;
  private final PlantResult result;
  private final UnitSystem units;

  /** The sheets of units that go wrong in the same way, by name. */
  private final Map<String, Map<String, Care>> sheets = new LinkedHashMap<>();

  private OperationSheet(PlantSpec spec, PlantResult result, UnitSystem units) {
    this.spec = spec;
    this.result = result;
    this.units = units;
  }

  /** The sheet of the plant of a design; empty without a plant that has units to run. */
  static List<Block> of(Assessment assessment) {
    if (assessment.plant().isEmpty()) {
      return List.of();
    }
    OperationSheet sheet =
        new OperationSheet(
            assessment.design().plant().orElseThrow(),
            assessment.plant().get(),
            assessment.design().units());
    sheet.spec.units().forEach(sheet::unit);
    if (sheet.sheets.isEmpty()) {
      return List.of();
    }
    List<Block> all = new ArrayList<>();
    all.add(new Block.Heading(1, "Operation sheet"));
    all.add(
        new Block.Paragraph(
            "Numbers are those of this design. What to look at is common practice, no source; the"
                + " makers' instructions come first. Look from outside: never enter a pit, tank,"
                + " box or channel, and lock out a machine before you open it."));
    sheet.sheets.values().forEach(alike -> all.add(card(alike)));
    return all;
  }

  /** One card for units that are alike: what they share is said once. */
  private static Block card(Map<String, Care> alike) {
    List<String> lines = new ArrayList<>(List.of(""));
    lines.add(line(alike, "Daily", Care::daily));
    lines.add(line(alike, "Monthly", Care::monthly));
    lines.add(line(alike, "It goes wrong when", Care::wrong));
    lines.add(line(alike, "Clean", Care::clean));
    return new Block.Marked(String.join(", ", alike.keySet()), lines);
  }

  /** What all of the units need, then what each needs besides. */
  private static String line(Map<String, Care> alike, String when, Function<Care, String> what) {
    Told told =
        Told.of(
            List.copyOf(alike.keySet()),
            alike.values().stream()
                .map(care -> List.of(what.apply(care).replaceFirst("\\.$", "").split("; ")))
                .toList(),
            "; ");
    List<String> lines = new ArrayList<>();
    if (!told.shared().isEmpty()) {
      lines.add(String.join("; ", told.shared()));
    }
    lines.addAll(told.own(", "));
    return when + ": " + String.join(". ", lines) + ".";
  }

  private void unit(PlantUnit unit) {
    unit.care(
            new Care.Numbers(
                units,
                result.units().getOrDefault(unit.name(), List.of()),
                stream ->
                    spec.products().stream()
                        .anyMatch(p -> p.use() == Use.BEDDING && p.stream().equals(stream)),
                lasts(unit),
                result.accounts().map(a -> new Figure("", Kind.PERCENT, a.liquor().solids()))))
        .ifPresent(
            care ->
                sheets
                    .computeIfAbsent(care.wrong(), wrong -> new LinkedHashMap<>())
                    .put(unit.name(), care));
  }

  private Optional<Figure> lasts(PlantUnit unit) {
    return result
        .accounts()
        .flatMap(
            accounts ->
                unit.asStorage().isPresent()
                    ? accounts.figures().of("Storage: " + unit.name(), "days of storage")
                    : accounts.figures().of(PlantTotals.PITS, unit.name()));
  }
}
