# Not built where it was written (no container engine there): written with care, please report what fails.
FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
COPY . .
RUN dotnet publish src/Barshow.Web -c Release -o /app

FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /app
COPY --from=build /app .
ENV BARSHOW_DATA=/data
VOLUME /data
# The app listens on loopback only until accounts exist, so the container shares the host's network (see docker-compose.yml).
ENTRYPOINT ["dotnet", "Barshow.Web.dll"]
