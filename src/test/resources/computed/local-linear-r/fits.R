# R 4.2.2 (stats::lm); command: Rscript fits.R; a seeded invented pull and its local linear fits
set.seed(20261125)
speed <- sort(round(300 + 330 * runif(90) + rnorm(90, 0, 0.5), 2)); speed <- unique(speed)
power <- round(60000 + 180 * (speed - 300) - 0.2 * (speed - 480)^2 + rnorm(length(speed), 0, 900), 1)
write.csv(data.frame(speed, power), "pull.csv", row.names = FALSE, quote = FALSE)
at <- c(seq(ceiling(min(speed)), floor(max(speed)), by = 7.25), speed[c(1, 40, length(speed))])
fit <- function(x, h) {
  u <- (speed - x) / h
  w <- ifelse(abs(u) < 1, 0.75 * (1 - u^2), 0)
  if (sum(w > 0) < 3) return(approx(speed, power, x)$y)
  unname(predict(lm(power ~ speed, weights = w, subset = w > 0), data.frame(speed = x)))
}
out <- do.call(rbind, lapply(c(3, 10.5, 40), function(h) data.frame(h = h, at = at, fit = sapply(at, fit, h = h))))
out$fit <- sprintf("%.9f", out$fit); out$at <- sprintf("%.4f", out$at)
write.csv(out, "fits.csv", row.names = FALSE, quote = FALSE)
