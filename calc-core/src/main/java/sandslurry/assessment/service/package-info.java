/** What came of everything that the line meets beside its design state. */
package sandslurry.assessment.service;
