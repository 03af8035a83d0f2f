/**
 * The form and the command line: views of an Assessment. No formula lives here.
 *
 * <p>{@link sandslurry.ui.Main} is the only door. Behind it, {@code FormModel} holds what the form
 * shows without knowing Swing; input rows write texts into its document, result views read its
 * assessment.
 */
package sandslurry.ui;
