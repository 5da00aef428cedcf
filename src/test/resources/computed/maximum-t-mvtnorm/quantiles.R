# mvtnorm 1.1-3 in R 4.2.2; command: Rscript quantiles.R > quantiles.csv; about a minute
library(mvtnorm)
correlation <- list(
  exponential = function(n, a) exp(-abs(outer(1:n, 1:n, "-")) / a),
  gaussian = function(n, a) exp(-outer(1:n, 1:n, "-")^2 / (2 * a^2)) * (1 - 1e-6) + 1e-6 * diag(n),
  equal = function(n, a) a + (1 - a) * diag(n))
cases <- rbind(
  expand.grid(kind = "equal", n = c(2, 20), a = c(0, 0.5), df = c(1, 5, Inf), tail = "both.tails", rate = 0.05),
  expand.grid(kind = "exponential", n = 12, a = 4, df = c(2, 13, Inf), tail = c("both.tails", "upper.tail"), rate = c(0.05, 0.01)),
  expand.grid(kind = "gaussian", n = 25, a = c(3, 10), df = c(3, 8), tail = "both.tails", rate = 0.05))
cat("kind,n,a,df,sides,rate,quantile\n")
for (i in seq_len(nrow(cases))) {
  k <- cases[i, ]
  R <- correlation[[as.character(k$kind)]](k$n, k$a)
  both <- as.character(k$tail) == "both.tails"
  set.seed(20261125 + i)
  outside <- function(c) {
    low <- if (both) rep(-c, k$n) else rep(-Inf, k$n)
    (if (is.finite(k$df)) pmvt(low, rep(c, k$n), df = k$df, corr = R, algorithm = GenzBretz(maxpts = 1e5, abseps = 5e-5))
      else pmvnorm(low, rep(c, k$n), corr = R, algorithm = GenzBretz(maxpts = 1e5, abseps = 5e-5))) - (1 - k$rate)
  }
  t1 <- qt(1 - k$rate / (1 + both), k$df); tn <- qt(1 - k$rate / (1 + both) / k$n, k$df)
  q <- uniroot(function(u) outside(exp(u)), log(c(t1 * 0.98, tn * 1.02)), tol = 1e-4)$root
  cat(sprintf("%s,%d,%g,%s,%s,%g,%.4f\n", k$kind, k$n, k$a, format(k$df), if (both) "two" else "one", k$rate, exp(q)))
}
