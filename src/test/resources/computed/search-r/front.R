# The front of hours against detectable gain without a drift, by closed forms and by brute force over counts, pulls and warm-ups.
# Equal pulls, own data: the t-test on install means is exact, so Var = (sr^2 + sp^2/n) (1/kA + 1/kB) and df = kA + kB - 2.
# R 4.2.2, base only.  Rscript front.R > front.csv
sp <- 1.2; sr <- 0.6; alpha <- 0.05; wanted <- 0.8
interval <- 5; swap <- 20; setup <- 30; hours <- 8
perHour <- 120; perPull <- 8; perSwap <- 40; once <- 25; money <- 1500

detectable <- function(se, df) {
  t <- qt(1 - alpha / 2, df)
  power <- function(d) pt(t, df, d, lower.tail = FALSE) + pt(-t, df, d)
  se * uniroot(function(d) power(d) - wanted, c(0.1, 36), tol = 1e-12)$root
}

days <- NULL
for (k in 3:10) for (kB in 1:(k - 1)) for (n in 2:10) for (w in 1:3) {
  minutes <- setup + k * (n + w) * interval + (k - 1) * swap
  cost <- minutes / 60 * perHour + k * (n + w) * perPull + (k - 1) * perSwap + once
  if (minutes > 60 * hours || cost > money) next
  se <- sqrt((sr^2 + sp^2 / n) * (1 / (k - kB) + 1 / kB))
  days <- rbind(days, data.frame(installs = k, pulls = n, warmUps = w, minutes, cost, df = k - 2, se, gain = detectable(se, k - 2)))
}
days <- days[order(days$minutes, days$gain), ]
best <- Inf
for (i in seq_len(nrow(days))) {
  keep <- days$gain[i] < best * (1 - 1e-9)
  days$keep[i] <- keep
  if (keep) best <- days$gain[i]
}
front <- days[days$keep, ]
cat("installs,pulls,warmUps,minutes,cost,df,se,gain\n")
for (i in seq_len(nrow(front))) with(front[i, ], cat(sprintf("%d,%d,%d,%.10g,%.10g,%d,%.10f,%.10f\n",
  installs, pulls, warmUps, minutes, cost, df, se, gain)))
