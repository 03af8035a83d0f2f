/** The line and its pump in every state. */
package sandslurry.assessment.states;
