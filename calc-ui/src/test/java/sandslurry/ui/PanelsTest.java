package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JEditorPane;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.design.document.DesignDocument;

/** The panels of the form, built and painted without a display. */
class PanelsTest {
  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  private static FormModel model() {
    FormModel model = new FormModel(Designs.AT_ONCE);
    model.startFrom(Designs.everything());
    return model;
  }

  static List<JComponent> all(Container root) {
    List<JComponent> found = new ArrayList<>();
    for (Component child : root.getComponents()) {
      if (child instanceof JComponent component) {
        found.add(component);
      }
      if (child instanceof Container container) {
        found.addAll(all(container));
      }
    }
    return found;
  }

  static <C extends JComponent> C find(Container root, Class<C> type, String name) {
    return all(root).stream()
        .filter(type::isInstance)
        .filter(c -> name.equals(c.getName()))
        .map(type::cast)
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + type.getSimpleName() + " named " + name));
  }

  private static void layOut(JComponent component, int width, int height) {
    component.setSize(new Dimension(width, height));
    // Text that wraps takes its height from its width, which is known after the first pass.
    for (int pass = 0; pass < 3; pass++) {
      layOut(component);
    }
  }

  private static BufferedImage paint(JComponent component, int width, int height) {
    layOut(component, width, height);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    component.printAll(g);
    g.dispose();
    return image;
  }

  private static void layOut(Container container) {
    container.invalidate();
    container.doLayout();
    for (Component child : container.getComponents()) {
      if (child instanceof Container inner) {
        layOut(inner);
      }
    }
  }

  private static long colours(BufferedImage image) {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    return java.util.Arrays.stream(pixels).distinct().count();
  }

  @Test
  void everyPageOfTheResultsIsPainted() throws Exception {
    onEventThread(
        () -> {
          ResultsPanel results = new ResultsPanel(model(), pointer -> {});
          for (int i = 0; i < results.tabs().getTabCount(); i++) {
            results.tabs().setSelectedIndex(i);
            BufferedImage image = paint(results.component(), 900, 700);
            BufferedImage page = image.getSubimage(100, 150, 700, 450);
            assertThat(colours(page)).as(results.tabs().getTitleAt(i)).isGreaterThan(5);
          }
          return null;
        });
  }

  @Test
  void theInputsArePaintedInANarrowWindowWithoutRunningOverTheEdge() throws Exception {
    onEventThread(
        () -> {
          for (DesignDocument design : designs()) {
            InputsPanel inputs = inputs(design);
            paint(inputs.component(), 420, 9000);
            for (JComponent component : all(inputs.component())) {
              if (isShown(component)
                  && (component instanceof JTextField || component instanceof JComboBox)) {
                int right =
                    SwingUtilities.convertPoint(
                            component, component.getWidth(), 0, inputs.component())
                        .x;
                assertThat(right).as(component.getName()).isLessThanOrEqualTo(420);
                assertThat(component.getWidth()).as(component.getName()).isGreaterThan(60);
              }
            }
          }
          return null;
        });
  }

  @Test
  void everyFieldThatGetsTheFocusComesIntoView() throws Exception {
    onEventThread(
        () -> {
          InputsPanel inputs = inputs(Designs.everything());
          layOut(inputs.component(), 470, 300);
          JViewport port = inputs.component().getViewport();
          int seen = 0;
          for (JComponent component : all(inputs.component())) {
            if (isShown(component) && component instanceof JTextField field) {
              inputs.bringIntoView(field);
              int y =
                  SwingUtilities.convertPoint(field, 0, field.getHeight() / 2, port.getView()).y;
              assertThat(y)
                  .as(field.getName())
                  .isBetween(port.getViewPosition().y, port.getViewPosition().y + port.getHeight());
              seen++;
            }
          }
          assertThat(seen).isGreaterThan(29);
          return null;
        });
  }

  private static List<DesignDocument> designs() {
    return List.of(Designs.everything(), Designs.example("closed-loop-dairy.json"));
  }

  private static InputsPanel inputs(DesignDocument design) {
    FormModel model = new FormModel(Designs.NEVER);
    model.startFrom(design);
    return new InputsPanel(model);
  }

  @Test
  void noLabelOfAFieldIsCutOff() throws Exception {
    onEventThread(
        () -> {
          for (DesignDocument design : designs()) {
            InputsPanel inputs = inputs(design);
            for (int unit = 0; unit < Math.max(1, design.size("/plant/units")); unit++) {
              inputs.focus("/plant/units/" + unit);
              layOut(inputs.component(), 470, 9000);
              for (JComponent component : all(inputs.component())) {
                if (component instanceof JLabel label
                    && isShown(label)
                    && label.getLabelFor() != null) {
                  assertThat(label.getWidth())
                      .as(label.getText())
                      .isGreaterThanOrEqualTo(label.getPreferredSize().width);
                }
              }
            }
          }
          return null;
        });
  }

  static boolean isShown(Component component) {
    for (Component c = component; c != null; c = c.getParent()) {
      if (!c.isVisible()) {
        return false;
      }
    }
    return true;
  }

  @Test
  void everyComponentThatTakesTheFocusHasAnAccessibleName() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          JPanel both = new JPanel();
          both.add(new InputsPanel(model).component());
          both.add(new ResultsPanel(model, pointer -> {}).component());
          List<JComponent> focusable =
              all(both).stream().filter(PanelsTest::takesTheFocus).toList();
          assertThat(focusable).hasSizeGreaterThan(60);
          for (JComponent component : focusable) {
            assertThat(component.getAccessibleContext().getAccessibleName())
                .as(component.getClass().getSimpleName() + " " + component.getName())
                .isNotBlank();
          }
          return null;
        });
  }

  private static boolean takesTheFocus(JComponent component) {
    boolean kind =
        component instanceof JTextComponent
            || component instanceof AbstractButton
            || component instanceof JComboBox
            || component instanceof JList
            || component instanceof JTable
            || component instanceof JTabbedPane;
    return kind
        && component.isFocusable()
        && component.isRequestFocusEnabled()
        && !(component.getParent() instanceof JComboBox);
  }

  @Test
  void aBadTextIsKeptMarkedAndExplainedAndTheResultsAreBlank() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          JTextField field = find(inputs.component(), JTextField.class, "/lines/0/flow/design");
          JTextArea report = find(results.component(), JTextArea.class, "report");
          results.open("Report");
          assertThat(report.getText()).contains("Working");

          field.setText("460 psi");

          assertThat(field.getText()).isEqualTo("460 psi");
          assertThat(field.getClientProperty("JComponent.outline")).isEqualTo("error");
          assertThat(field.getAccessibleContext().getAccessibleDescription()).contains("flow");
          assertThat(find(results.component(), JLabel.class, "verdict").getText())
              .isEqualTo("NO VERDICT");
          assertThat(report.getText()).isEqualTo("No results: some inputs need attention.");
          assertThat(results.reportText()).isEmpty();
          results.open("Answer");
          assertThat(find(results.component(), JEditorPane.class, "findings").getText())
              .contains("460 psi");
          results.open("Report");

          field.setText("350 gpm");
          assertThat(field.getClientProperty("JComponent.outline")).isNull();
          assertThat(report.getText()).contains("Working");
          return null;
        });
  }

  @Test
  void whatIsMissingIsAskedForAndNotCalledAMistake() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.AT_ONCE);
          InputsPanel inputs = new InputsPanel(model);
          JTextField field = find(inputs.component(), JTextField.class, "/lines/0/flow/design");
          assertThat(field.getClientProperty("JComponent.outline")).isEqualTo("warning");
          assertThat(field.getAccessibleContext().getAccessibleDescription())
              .startsWith("Missing:");
          return null;
        });
  }

  @Test
  void choosingAnotherCarrierTakesItsFieldsAway() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          choose(inputs, "/carrier/kind", "manure");
          find(inputs.component(), JTextField.class, "/carrier/totalSolids").setText("3 %");
          assertThat(model.reading().problems()).isEmpty();
          choose(inputs, "/carrier/kind", "water");
          assertThat(model.reading().problems()).isEmpty();
          assertThat(model.document().has("/carrier/totalSolids")).isFalse();
          return null;
        });
  }

  @Test
  void whatWasTypedForAnAnswerComesBackWithIt() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          InputsPanel inputs = new InputsPanel(model);
          model.startFrom(Designs.everything());
          choose(inputs, "/carrier/kind", "manure");
          find(inputs.component(), JTextField.class, "/carrier/totalSolids").setText("3 %");
          DesignDocument manure = model.document();
          choose(inputs, "/carrier/kind", "water");
          choose(inputs, "/carrier/kind", "manure");
          assertThat(sorted(model.document())).isEqualTo(sorted(manure));
          model.startFrom(Designs.everything());
          comesBack(model, inputs, "/sand/gradation", "ASTM C33");
          comesBack(model, inputs, "/sand/gradation", "two sizes");
          comesBack(model, inputs, "/lines/0/pump/kind", "piston");
          comesBack(model, inputs, "/lines/0/pump/kind", "none");
          comesBack(model, inputs, "/lines/0/route/runs/0/pipe", "given bore");
          comesBack(model, inputs, "/lines/0/route/runs/1/pipe", "ASTM D2241");
          return null;
        });
  }

  /** Another answer and back leaves the design as it was; so do the steps that undo them. */
  private static void comesBack(
      FormModel model, InputsPanel inputs, String question, String another) {
    DesignDocument before = model.document();
    if (question.startsWith("/lines/0/route/runs/1")) {
      find(inputs.component(), JList.class, "/lines/0/route/runs").setSelectedIndex(1);
    }
    JComboBox<?> box = find(inputs.component(), JComboBox.class, question);
    Object answer = box.getSelectedItem();
    choose(inputs, question, another);
    assertThat(model.document()).as("%s %s", question, another).isNotEqualTo(before);
    find(inputs.component(), JComboBox.class, question).setSelectedItem(answer);
    assertThat(sorted(model.document())).as("%s %s", question, another).isEqualTo(sorted(before));
    model.undo();
    model.undo();
    assertThat(model.document()).isEqualTo(before);
  }

  @Test
  void aPipeIsChosenByStandardSizeAndClassOrByItsBore() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          choose(inputs, "/lines/0/route/runs/0/pipe", "ASTM D2241");
          assertThat(model.document().text("/lines/0/route/runs/0/pipe/size")).isEqualTo("4 in");
          assertThat(model.problemsAt("/lines/0/route/runs/0")).isNotEmpty();
          choose(inputs, "/lines/0/route/runs/0/pipe/class", "SDR 26");
          assertThat(model.problemsAt("/lines/0/route/runs/0")).isEmpty();
          choose(inputs, "/lines/0/route/runs/0/pipe", "given bore");
          find(inputs.component(), JTextField.class, "/lines/0/route/runs/0/bore").setText("4 in");
          assertThat(model.reading().problems()).isEmpty();
          return null;
        });
  }

  @Test
  void everyKindOfSandCanBeChosenAndGivesSomethingToFillIn() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          choose(inputs, "/sand/gradation", "ASTM C33");
          assertThat(model.reading().problems()).isEmpty();
          choose(inputs, "/sand/gradation", "two sizes");
          find(inputs.component(), JTextField.class, "/sand/d50").setText("0.4 mm");
          find(inputs.component(), JTextField.class, "/sand/d85").setText("0.9 mm");
          assertThat(model.reading().problems()).isEmpty();
          choose(inputs, "/sand/gradation", "sieves");
          JTable table = find(inputs.component(), JTable.class, "/sand/gradation");
          assertThat(table.getRowCount()).isEqualTo(3);
          String[][] rows = {{"2 mm", "100 %"}, {"0.5 mm", "50 %"}, {"0.1 mm", "0 %"}};
          for (int row = 0; row < 3; row++) {
            table.setValueAt(rows[row][0], row, 0);
            table.setValueAt(rows[row][1], row, 1);
          }
          assertThat(model.reading().problems()).isEmpty();
          return null;
        });
  }

  @Test
  void rowsRunsAndPartsAreAddedRemovedAndMoved() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          click(inputs, "/lines/0/pump/curve add");
          assertThat(model.document().size("/lines/0/pump/curve")).isEqualTo(6);
          click(inputs, "/lines/0/pump/curve remove");
          assertThat(model.reading().problems()).isEmpty();
          click(inputs, "/lines/0/route/runs down");
          assertThat(model.document().text("/lines/0/route/runs/1/name")).isEqualTo("Buried line");
          click(inputs, "/lines/0/route/runs up");
          click(inputs, "/lines/0/route/runs add");
          assertThat(model.document().size("/lines/0/route/runs")).isEqualTo(3);
          click(inputs, "/lines/0/route/runs remove");
          assertThat(model.document()).isEqualTo(Designs.everything());
          click(inputs, "part lane");
          assertThat(model.outcome().assessment().orElseThrow().lane()).isEmpty();
          click(inputs, "part route");
          assertThat(model.document().has("/lines/0/pump")).isFalse();
          click(inputs, "part lane");
          assertThat(model.document().json("/lane")).isEqualTo(Designs.everything().json("/lane"));
          return null;
        });
  }

  @Test
  void aPartThatIsUntickedAndTickedAgainIsAsItWas() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          InputsPanel inputs = new InputsPanel(model);
          model.startFrom(Designs.everything());
          for (String part : new String[] {"part route", "part lane", "part suction"}) {
            click(inputs, part);
            assertThat(model.document()).as(part).isNotEqualTo(Designs.everything());
            click(inputs, part);
            assertThat(sorted(model.document())).as(part).isEqualTo(sorted(Designs.everything()));
          }
          click(inputs, "part lane");
          model.startFrom(Designs.everything().without("/lane"));
          click(inputs, "part lane");
          assertThat(model.document().text("/lane/length")).as("of another design").isEmpty();
          return null;
        });
  }

  /** The parts of a document, wherever in it they stand. */
  private static List<String> sorted(DesignDocument document) {
    return document.toString().lines().map(l -> l.replaceAll(",$", "")).sorted().toList();
  }

  @Test
  void anyNumberOfUnlikePumpsIsAddedNamedMovedAndRemovedAndNothingIsLost() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          model.startFrom(Designs.everything());
          InputsPanel inputs = new InputsPanel(model);
          DesignDocument one = model.document();
          click(inputs, "/lines/0/pump/others add");
          click(inputs, "/lines/0/pump/others add");
          assertThat(model.document().size("/lines/0/pump/others")).isEqualTo(3);
          find(inputs.component(), JTextField.class, "/lines/0/pump/others/2/name")
              .setText("third");
          choose(inputs, "/lines/0/pump/others/2/standby", "yes");
          JTable curve = find(inputs.component(), JTable.class, "/lines/0/pump/others/2/curve");
          curve.setValueAt("300 gpm", 1, 0);
          click(inputs, "/lines/0/pump/others up");
          assertThat(model.document().text("/lines/0/pump/others/1/name")).isEqualTo("third");
          assertThat(model.document().text("/lines/0/pump/others/1/standby")).isEqualTo("yes");
          assertThat(model.document().text("/lines/0/pump/others/1/curve/1/flow"))
              .isEqualTo("300 gpm");
          assertThat(model.document().json("/lines/0/pump/others/0"))
              .isEqualTo(one.json("/lines/0/pump/others/0"));
          JList<?> list = find(inputs.component(), JList.class, "/lines/0/pump/others");
          assertThat(list.getModel().getElementAt(1).toString())
              .contains("third", "stands by", "needs attention");
          click(inputs, "/lines/0/pump/others remove");
          list.setSelectedIndex(1);
          click(inputs, "/lines/0/pump/others remove");
          assertThat(model.document()).isEqualTo(one);
          click(inputs, "/lines/0/pump/others remove");
          assertThat(model.document().has("/lines/0/pump/others")).isFalse();
          assertThat(model.reading().problems()).isEmpty();
          return null;
        });
  }

  private static void choose(InputsPanel inputs, String name, String value) {
    JComboBox<?> box = find(inputs.component(), JComboBox.class, name);
    for (int i = 0; i < box.getItemCount(); i++) {
      if (((Choice) box.getItemAt(i)).value().equals(value)) {
        box.setSelectedIndex(i);
        return;
      }
    }
    throw new AssertionError("no " + value + " in " + name);
  }

  private static void click(InputsPanel inputs, String name) {
    find(inputs.component(), AbstractButton.class, name).doClick(0);
  }

  @Test
  void severitiesDifferInShapeNotOnlyInColour() throws Exception {
    List<Long> dark = new ArrayList<>();
    for (sandslurry.fact.finding.Severity severity : sandslurry.fact.finding.Severity.values()) {
      BufferedImage image = new BufferedImage(64, 64, BufferedImage.TYPE_BYTE_BINARY);
      Graphics2D g = image.createGraphics();
      g.setColor(java.awt.Color.WHITE);
      g.fillRect(0, 0, 64, 64);
      new SeverityIcon(java.util.Optional.of(severity), 64).paintIcon(null, g, 0, 0);
      g.dispose();
      int[] pixels = image.getRGB(0, 0, 64, 64, null, 0, 64);
      dark.add(java.util.Arrays.stream(pixels).filter(p -> (p & 0xFFFFFF) == 0).count());
    }
    assertThat(dark).doesNotHaveDuplicates();
  }

  @Test
  void theTipOfAFieldNamesTheRangeThatTheReaderAllows() throws Exception {
    Consumer<JTextField> check =
        field -> assertThat(field.getToolTipText(null)).contains("0.1 m to", "300 ft");
    onEventThread(
        () -> {
          InputsPanel inputs = new InputsPanel(model());
          check.accept(find(inputs.component(), JTextField.class, "/lines/0/route/runs/0/length"));
          return null;
        });
  }
}
