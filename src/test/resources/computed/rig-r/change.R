# Share of steady normal series that part into two levels at least as well as each of these; a million series each. Prints statistic, place, p.
st<-function(y){n<-length(y);y<-y-mean(y);s<-cumsum(y)[-n];k<-1:(n-1);v<-s^2/k/(n-k);c(max(v)*n/sum(y^2),which.max(v))}
set.seed(7)
for(y in list(c(190.2,190.9,189.7,192.4,193.1,192.2,193.0),c(188.1,190.4,189.2,190.0,188.8),c(1,2,2,1,3,3,2,4),c(0.2,-0.4,0.1,1.4,0.9,1.2,-0.1,1.6,0.7,1.1,0.4,1.3))){
 n<-length(y); N<-1e6; Z<-matrix(rnorm(N*n),N); Z<-Z-rowMeans(Z); S<-0; m<-0; for(k in 1:(n-1)){S<-S+Z[,k]; m<-pmax(m,S^2/k/(n-k))}
 cat(st(y), mean(m*n/rowSums(Z^2)>=st(y)[1]),"\n")}
