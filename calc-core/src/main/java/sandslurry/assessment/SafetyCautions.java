package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.plant.unit.PlantUnit;

/** The dangers to people that come with what a design contains. */
final class SafetyCautions {
  private static final String COMMON = "common practice, no source";

  private static final SafetyCaution REVIEW =
      new SafetyCaution(
          "Review",
          "This is a screening estimate. A licensed practitioner must review the design, and local"
              + " codes, the permitting agency and the makers' instructions come before it.",
          COMMON);

  private static final SafetyCaution GAS =
      new SafetyCaution(
          "Manure gas and confined spaces",
          "Pits, sumps, channels and closed storages hold hydrogen sulfide, carbon dioxide, methane"
              + " and ammonia, and may lack oxygen. Agitation and pumping release hydrogen sulfide"
              + " within seconds: never agitate or pump from under a building with people or animals"
              + " in it. Above about 100 ppm it can no longer be smelled (that level is the"
              + " NIOSH value immediately dangerous to life or health). Never enter, not even to"
              + " help someone who has collapsed: call rescuers with air supply. Entry only by"
              + " trained people under a confined-space permit with ventilation, monitoring,"
              + " harness and attendants. Ask whether gypsum or other sulfates reach the manure.",
          "NIOSH Publication 90-103 (1990), Request for Assistance in Preventing Deaths of Farm"
              + " Workers in Manure Pits; 29 CFR 1910.146 as good practice; from memory, unverified");

  private static final SafetyCaution STORED_PRESSURE =
      new SafetyCaution(
          "Stored pressure when clearing a plug",
          "A plugged line can hold full pump pressure on one side of the plug while a gauge on the"
              + " other side reads zero. Stop and lock out the drive, relieve the pressure (run a"
              + " piston pump back several strokes), block the flow back from the storage, stand"
              + " clear of the open end, and only then open the line. Never clear a plug with"
              + " compressed air. A sealed line full of manure builds up gas: leave it flushed or"
              + " vented.",
          COMMON);

  private static final SafetyCaution LOCK_OUT =
      new SafetyCaution(
          "Lock-out of moving machinery",
          "Pumps, augers, rakes and scrapers start without warning. Before any guard comes off,"
              + " lock out and tag the electric and the hydraulic drive, discharge accumulators and"
              + " block what can fall or turn.",
          "29 CFR 1910.147 as good practice, 29 CFR 1928.57 for guards; from memory, unverified");

  private static final SafetyCaution DROWNING =
      new SafetyCaution(
          "Drowning and engulfment",
          "Fence pits, lanes and storages and keep covers and grates closed. Settled sand and"
              + " crusts look firm and are not: nobody walks on them. Dig sand piles from the toe"
              + " and keep loaders away from open edges.",
          COMMON);

  private static final SafetyCaution CROSS_CONNECTION =
      new SafetyCaution(
          "Cross-connection with potable water",
          "Wash and flush water connections need an air gap or a backflow preventer approved by the"
              + " local plumbing authority; a hose hanging in the liquid is a cross-connection. Mark"
              + " lines of recycled liquid as not potable.",
          COMMON);

  private static final SafetyCaution EXCAVATION =
      new SafetyCaution(
          "Excavation, structures and local code",
          "Trenches, pits, walls, embankments and liners need a design and an inspection of their"
              + " own: none is sized here. Have buried services located before digging, protect"
              + " trenches against collapse, and build to local code and the permitting agency's"
              + " standard.",
          COMMON);

  private static final SafetyCaution RESTART =
      new SafetyCaution(
          "Restart of a stopped or plugged line",
          "A line that will not start stands under the pressure that was put on it. Never raise it"
              + " above the rating of the weakest part or of a hose or coupling, and never hammer on"
              + " or stand in line with the pipe, a coupling, a clean-out or the outlet: a plug that"
              + " lets go leaves like a shot. Before a coupling is loosened lock out every drive,"
              + " relieve both sides of the plug, let the pressure bleed off through a valve and take"
              + " it that there is pressure left. The pressures to restart given here are estimates"
              + " and no leave to apply them.",
          COMMON);

  private static final SafetyCaution HIGH_FLUSH =
      new SafetyCaution(
          "Flush from a tank or by a pump",
          "A high tank keeps the whole line at its pressure as long as its valve is open, and a"
              + " full valve opened at once strikes the line and whips hoses. Open slowly, anchor the"
              + " outlet, keep people away from it, and close and lock the flush valve before anyone"
              + " opens the line.",
          COMMON);

  private static final SafetyCaution PISTON =
      new SafetyCaution(
          "Piston pump against a closed valve",
          "A piston pump builds pressure against a closed valve or a plug until something gives."
              + " Never start it before the line is open, never run it without a relief that works,"
              + " and never block, raise or remove the relief. Oil accumulators and air vessels hold"
              + " pressure when all is switched off: bleed them first. An air vessel is a pressure"
              + " vessel under the code in force.",
          COMMON);

  private static final SafetyCaution SCREW =
      new SafetyCaution(
          "Screw conveyor",
          "A screw takes off hands and feet. Keep grates and guards on over its whole length, in the"
              + " floor as well, keep people, children and animals off it, and lock out its drive"
              + " before anyone clears, oils or reaches into it. Never clear it while it turns.",
          "29 CFR 1928.57 for guards; from memory, unverified");

  private static final SafetyCaution AUTOMATIC =
      new SafetyCaution(
          "Machines that start by themselves",
          "Pumps that start by level or clock start while someone works on them. Put up a sign, fit a"
              + " switch within reach that can be locked, and lock it before any work; stopping by"
              + " the level switch is no lock-out.",
          "29 CFR 1910.147 as good practice; from memory, unverified");

  private static final SafetyCaution ACID =
      new SafetyCaution(
          "Acid against struvite and scale",
          "Acid on manure sets hydrogen sulfide free, and burns. Rinse the line with water first, add"
              + " acid to water and never water to acid, never bring it together with chlorine or"
              + " hypochlorite, ventilate, wear what the safety data sheet says, keep others away,"
              + " and let no acid reach a pit with people or animals near. What becomes of the spent"
              + " acid is for the permitting agency to say.",
          COMMON);

  private SafetyCautions() {}

  private static final SafetyCaution SULFATE =
      new SafetyCaution(
          "Sulfates and agitation of a storage",
          "Ask before anything is agitated: does gypsum reach the manure, in bedding sand, as stall"
              + " dressing or with feed, or does the water hold sulfate? Then hydrogen sulfide at"
              + " the edge of an open storage can kill too. Keep people and animals away and upwind"
              + " while it is agitated or pumped, allow no flame, and never bring such manure into"
              + " a storage under a barn. Sand itself is no source of sulfate.",
          "Penn State Extension, Manure Storage Design and Safety Considerations with Gypsum"
              + " Bedding");

  private static final SafetyCaution STORAGE_SIZE =
      new SafetyCaution(
          "Storage, banks and liner",
          "Volumes and days of storage here are a balance, no design: storm, freeboard, setback,"
              + " liner, banks, walls and covers are for the standard in force, the permitting"
              + " agency and a licensed engineer. Nothing here says that a pit or storage may be"
              + " entered or how long it must be ventilated.",
          COMMON);

  private static final SafetyCaution BEDDING =
      new SafetyCaution(
          "Recycled sand and liquid",
          "No recycled liquid in the milking area or where animals drink. Whether recovered sand is"
              + " fit for stalls is for the veterinarian and the milk inspector to say as well.",
          COMMON);

  static List<SafetyCaution> of(Design design, ServiceResult service) {
    List<SafetyCaution> cautions = new ArrayList<>();
    cautions.add(REVIEW);
    cautions.add(GAS);
    if (design.route().isPresent()) {
      cautions.add(STORED_PRESSURE);
    }
    if (service.stop().isPresent()) {
      cautions.add(RESTART);
    }
    Optional<OperationSpec> operation = design.service().operation();
    if (operation.flatMap(OperationSpec::flush).isPresent()) {
      cautions.add(HIGH_FLUSH);
    }
    if (design.pump().flatMap(PumpSpec::piston).isPresent()) {
      cautions.add(PISTON);
    }
    if (design.feed().screw().isPresent()) {
      cautions.add(SCREW);
    }
    if (operation.flatMap(OperationSpec::batchVolumeM3).isPresent()) {
      cautions.add(AUTOMATIC);
    }
    design
        .plant()
        .ifPresent(
            plant -> {
              cautions.add(SULFATE);
              cautions.add(STORAGE_SIZE);
              cautions.add(BEDDING);
              cautions.add(ACID);
              if (plant.has(PlantUnit.Role.SPINS) && design.route().isEmpty()) {
                cautions.add(STORED_PRESSURE);
              }
            });
    cautions.add(LOCK_OUT);
    cautions.add(DROWNING);
    cautions.add(CROSS_CONNECTION);
    cautions.add(EXCAVATION);
    return List.copyOf(cautions);
  }
}
