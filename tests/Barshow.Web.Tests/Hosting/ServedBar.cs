using Microsoft.AspNetCore.Mvc.Testing;

namespace Barshow.Web.Tests.Hosting;

/// <summary>The whole app with the demo bar in a folder of its own.</summary>
public sealed class ServedBar : WebApplicationFactory<Program>
{
    private readonly string _folder = Directory.CreateTempSubdirectory("barshow-").FullName;

    public ServedBar() => Environment.SetEnvironmentVariable("BARSHOW_DATA", _folder);

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(_folder))
            Directory.Delete(_folder, recursive: true);
    }
}

/// <summary>One app for all tests that ask it; the data folder is named by the process's environment.</summary>
[CollectionDefinition("served")]
public class OneServedBar : ICollectionFixture<ServedBar>;
