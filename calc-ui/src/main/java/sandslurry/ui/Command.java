package sandslurry.ui;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;

/** One command, for menu, tool bar and keyboard alike. */
@SuppressWarnings("serial")
final class Command extends AbstractAction {
  private final transient Runnable run;

  /**
   * Makes a command.
   *
   * @param name its name; an ampersand stands before the letter of its mnemonic
   * @param keys its keys, such as "control S"; null for none
   * @param tip what it does
   * @param run does it
   */
  Command(String name, String keys, String tip, Runnable run) {
    super(name.replace("&", ""));
    this.run = run;
    int mark = name.indexOf('&');
    if (mark >= 0) {
      putValue(Action.MNEMONIC_KEY, (int) Character.toUpperCase(name.charAt(mark + 1)));
      putValue(Action.DISPLAYED_MNEMONIC_INDEX_KEY, mark);
    }
    if (keys != null) {
      putValue(Action.ACCELERATOR_KEY, KeyStroke.getKeyStroke(keys));
    }
    putValue(Action.SHORT_DESCRIPTION, tip);
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    run.run();
  }
}
