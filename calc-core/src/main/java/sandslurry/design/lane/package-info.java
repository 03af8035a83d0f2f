/** What is given of a settling lane. */
package sandslurry.design.lane;
