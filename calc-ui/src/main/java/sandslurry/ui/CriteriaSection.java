package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JCheckBox;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.deposition.DepositionVelocityModel;

/** The margins by which the design is judged. */
final class CriteriaSection {
  private static final String WORST_SIZE = "/criteria/worstSizeGoverns";

  private CriteriaSection() {}

  static InputSection of(FormModel model) {
    InputSection section = new InputSection(model, "Criteria", "/criteria");
    section.text(FieldSpec.standard("Margin on velocity", "velocityMarginShare", "15 %", "15 %"));
    section.text(
        FieldSpec.standard("and not less than", "velocityMargin", "0.3 m/s", "0.3 m/s", "1 ft/s"));
    section.text(
        FieldSpec.standard("Wear starts above", "wearVelocity", "3 m/s", "3 m/s", "10 ft/s"));
    section.text(FieldSpec.standard("Use of pressure rating", "pressureShare", "72 %", "72 %"));
    section.text(FieldSpec.standard("Sand the lane must catch", "sandCapture", "75 %", "75 %"));
    section.text(FieldSpec.standard("Sand on a laminar floor", "floorShare", "1 %", "1 %"));
    section.choice(
        "Deposition judged by",
        () -> WORST_SIZE,
        () ->
            List.of(
                new Choice("yes", "the worst size from d50 to d85"), new Choice("no", "d50 alone")),
        document -> document.has(WORST_SIZE) ? document.text(WORST_SIZE) : "yes",
        (document, choice) -> document.with(WORST_SIZE, choice));
    roles(section);
    return section;
  }

  private static void roles(InputSection section) {
    JCheckBox show = new JCheckBox("Show the roles of the correlations");
    show.setName("show roles");
    section.panel().add(show, "span 2, align left");
    for (DepositionVelocityModel model : DepositionVelocities.all()) {
      ChoiceRow row = section.choice(model.name(), "depositionRoles/" + model.id(), parts(model));
      section.choiceWhen(
          d -> show.isSelected() || d.has("/criteria/depositionRoles/" + model.id()), row);
    }
    show.addActionListener(event -> section.refresh());
  }

  private static List<Choice> parts(DepositionVelocityModel model) {
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", word(DepositionVelocities.defaultRole(model)) + " (default)"));
    for (DepositionVelocities.Role role : DepositionVelocities.Role.values()) {
      choices.add(Choice.of(word(role)));
    }
    return choices;
  }

  private static String word(DepositionVelocities.Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }
}
