/** How warm a beer has been kept, told as one temperature, as days of its life, and as a date to drink it by. */
package undercroft.calc.ageing;
