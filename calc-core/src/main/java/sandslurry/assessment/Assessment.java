package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sandslurry.assessment.lane.LaneCourse;
import sandslurry.assessment.line.DilutionCurve;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.materials.SettlingResult;
import sandslurry.assessment.plant.PlantMaps;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.PumpResult;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Messages;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;
import sandslurry.fact.step.Step;
import sandslurry.material.liquid.Carrier;
import sandslurry.material.liquid.Carrier.Scatter;
import sandslurry.material.liquid.RheogramFit;
import sandslurry.separation.lane.LaneResult;

/**
 * What came of a design: everything that a person sees is a view of this.
 *
 * @param design the design
 * @param carrier the liquid as it was understood
 * @param settling how fast its grains fall in the liquid
 * @param line the line, when there is one
 * @param pump the pump, when there is one
 * @param service what the line meets beside its design state
 * @param lane the settling lane, when there is one
 * @param lanes the course of each lane, that of the design itself and those of its plant, by name
 * @param lines what came of each of several lines, by its name, in the order of the file; none
 *     where there is only one
 * @param plant the plant from the pens to the storage, when there is one
 * @param fit the fit of the carrier's rheology, when viscometer readings were given
 * @param dilution what dilution does to the line, when the design asks for it
 * @param band the same design with a thinner and a thicker carrier, when its thickness is known
 *     only to a factor
 * @param findings the findings, gravest first
 * @param cautions the dangers to people
 * @param working the steps behind every number
 */
// More than ten components: each subject is one, which a design may lack by itself.
public record Assessment(
    Design design,
    Carrier carrier,
    SettlingResult settling,
    Optional<LineResult> line,
    Optional<PumpResult> pump,
    ServiceResult service,
    Optional<LaneResult> lane,
    Map<String, LaneCourse> lanes,
    Map<String, Assessment> lines,
    Optional<PlantResult> plant,
    Optional<RheogramFit> fit,
    Optional<DilutionCurve> dilution,
    Optional<Band> band,
    List<Finding> findings,
    List<SafetyCaution> cautions,
    List<Step> working) {
  /** Copies the lists. */
  public Assessment {
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
    working = List.copyOf(working);
    lanes = PlantMaps.ordered(lanes);
    lines = PlantMaps.ordered(lines);
  }

  /**
   * This with more findings, in their order of gravity.
   *
   * @param more the findings
   * @return both
   */
  Assessment with(List<Finding> more) {
    return with(plant, Map.of(), more, List.of());
  }

  /**
   * This with what came of the plant.
   *
   * @param result the plant
   * @param courses the courses of its lanes
   * @param more its findings
   * @param steps its working
   * @return both
   */
  Assessment with(
      PlantResult result, Map<String, LaneCourse> courses, List<Finding> more, List<Step> steps) {
    return with(Optional.of(result), courses, more, steps);
  }

  private Assessment with(
      Optional<PlantResult> result,
      Map<String, LaneCourse> courses,
      List<Finding> more,
      List<Step> steps) {
    Map<String, LaneCourse> allLanes = new LinkedHashMap<>(lanes);
    allLanes.putAll(courses);
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    all.sort(Comparator.comparing(Finding::severity).reversed());
    List<Step> allSteps = new ArrayList<>(working);
    allSteps.addAll(steps);
    return new Assessment(
        design, carrier, settling, line, pump, service, lane, allLanes, lines, result, fit,
        dilution, band, all, cautions, allSteps);
  }

  /**
   * This, which came of a design without its lines, with what came of them.
   *
   * @param whole the design with its lines
   * @param each what came of each line, by its name
   * @param all the findings on everything
   * @param dangers the cautions on everything
   * @return all of it
   */
  Assessment with(
      Design whole, Map<String, Assessment> each, List<Finding> all, List<SafetyCaution> dangers) {
    return new Assessment(
        whole, carrier, settling, line, pump, service, lane, lanes, each, plant, fit, dilution,
        band, all, dangers, working);
  }

  /**
   * Several lines, the worst first: by verdict, then by the velocity over that which passes.
   *
   * @return what came of each, by its name; none where there is only one
   */
  public Map<String, Assessment> worstFirst() {
    Map<String, Assessment> sorted = new LinkedHashMap<>();
    lines.entrySet().stream()
        .sorted(Map.Entry.<String, Assessment>comparingByValue(CarriedFindings.GRAVER).reversed())
        .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    return sorted;
  }

  /**
   * One of several lines beside the plant, as if it were the only one.
   *
   * @param name its name
   * @return what came of it, and of the plant
   */
  public Assessment beside(String name) {
    List<Finding> ofPlant =
        findings.stream().filter(f -> f.topic() == Finding.Topic.PLANT).toList();
    return lines.get(name).with(plant, Map.of(), ofPlant, List.of());
  }

  /**
   * The same design at both ends of the scatter of its carrier.
   *
   * @param scatter the ends, and where the numbers of the carrier come from
   * @param thinner the design with the thinner carrier
   * @param thicker the design with the thicker carrier
   */
  public record Band(Scatter scatter, Assessment thinner, Assessment thicker) {
    /**
     * How far the thickness of the carrier is known, in a sentence.
     *
     * @return the sentence
     */
    public String words() {
      String clause =
          switch (scatter.source()) {
            case SOLIDS -> "scatter-solids";
            case FITTED -> "scatter-fitted";
            default -> "scatter-typed";
          };
      String factor = String.format(Locale.ROOT, "%.2g", scatter.factor());
      return Messages.of(Assessment.class)
          .says(clause, Map.of("factor", new Value.Name(factor)), thinner.design().units());
    }
  }

  /**
   * The verdict on the whole design.
   *
   * @return the gravest severity of all findings; {@link Severity#PASS} when there are only notes
   */
  public Severity verdict() {
    return findings.stream().map(Finding::severity).reduce(Severity.PASS, Severity::or);
  }
}
