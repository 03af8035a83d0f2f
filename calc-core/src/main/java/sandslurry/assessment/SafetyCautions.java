package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.plant.unit.PlantUnit;

/** The dangers to people that come with what a design contains. */
final class SafetyCautions {
  private static final ResourceBundle TEXTS =
      ResourceBundle.getBundle(SafetyCautions.class.getPackageName() + ".cautions", Locale.ROOT);

  private SafetyCautions() {}

  private static SafetyCaution caution(String key) {
    return new SafetyCaution(
        TEXTS.getString(key), TEXTS.getString(key + ".text"), TEXTS.getString(key + ".source"));
  }

  static List<SafetyCaution> of(Design design, ServiceResult service) {
    List<String> cautions = new ArrayList<>(List.of("review", "gas"));
    if (design.line().isPresent()) {
      cautions.add("stored-pressure");
    }
    if (service.stop().isPresent()) {
      cautions.add("restart");
    }
    Optional<OperationSpec> operation = design.service().operation();
    if (operation.flatMap(OperationSpec::flush).isPresent()) {
      cautions.add("high-flush");
    }
    if (design.pump().flatMap(PumpSpec::piston).isPresent()) {
      cautions.add("piston");
    }
    if (design.feed().screw().isPresent()) {
      cautions.add("screw");
    }
    if (operation.flatMap(OperationSpec::batchVolumeM3).isPresent()) {
      cautions.add("automatic");
    }
    design
        .plant()
        .ifPresent(
            plant -> {
              cautions.addAll(List.of("sulfate", "storage-size", "bedding", "acid"));
              if (plant.has(PlantUnit.Role.SPINS) && design.line().isEmpty()) {
                cautions.add("stored-pressure");
              }
            });
    cautions.addAll(List.of("lock-out", "drowning", "cross-connection", "excavation"));
    return cautions.stream().map(SafetyCautions::caution).toList();
  }
}
