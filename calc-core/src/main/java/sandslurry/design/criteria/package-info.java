/** What a design is judged by, and the limits that inputs share. */
package sandslurry.design.criteria;
