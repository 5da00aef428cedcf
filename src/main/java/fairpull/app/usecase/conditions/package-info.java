/** Air and heat by themselves: correction factors, whether a pull may start in this air, cool-downs and the interval that holds. */
package fairpull.app.usecase.conditions;
