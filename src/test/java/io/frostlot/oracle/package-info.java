/**
 * What must come out, found the long way: random tiny worlds, every order that could be placed in
 * them and every way of feeding, priced in plain arithmetic. Knows nothing of the integer program,
 * and of the forecast only the records it hands over: which meals there are, on which days each may
 * come and what would do is found again from the scenario ({@code OracleMeals}, {@code
 * OracleDays}), and what would come while nobody receives is left out.
 *
 * <p>To let tiny worlds have something new that a rule is about:
 *
 * <ol>
 *   <li>a constant at the end of {@link io.frostlot.oracle.Feature}: whether a world has it is
 *       drawn for itself, so all worlds without it stay as they are;
 *   <li>in {@code TinySupplier}, {@code TinyTerms}, {@code TinyKeeper} or {@code TinyWorlds}: draw
 *       its numbers only where the world has it, tight enough that it matters;
 *   <li>what it means, derived from the meaning of the words and not from the rule's code: money of
 *       one order in {@code OracleInvoice}; what may come in {@code Candidates} and {@code
 *       Arrivals}; what ties orders together in {@code TotalLimits}; what happens on a day as a
 *       {@code Stage} that {@code Exhaustive} puts into its place of the day ({@code Margins} is an
 *       example that remembers numbers in the counts of a {@code State});
 *   <li>where more pieces than can be eaten may pay because of it: {@code Candidates.mostUseful};
 *   <li>the rule into {@code EveryRuleMattersTest.SELDOM} where it takes more than a few dozen
 *       worlds to be noticed; what no rule is about, since meals, deliveries or freezers are made
 *       ready with it, into {@code Forgetting}.
 * </ol>
 */
@NullMarked
package io.frostlot.oracle;

import org.jspecify.annotations.NullMarked;
