using System.Text.Json;
using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

/// <summary>The bench on a tablet: logging with the network cut, handing over exactly once, two tablets merged, a page opened again without the server.</summary>
[Collection(OneStage.Name)]
public sealed class BenchTests(Stage stage)
{
    private const string Gin = "six-drinks-one-bottle-of-gin";

    [BrowserFact]
    public async Task What_is_logged_with_the_network_cut_twice_arrives_once()
    {
        await using var tablet = await OpenAsync();
        var page = tablet.Page;
        var context = page.Context;

        await context.SetOfflineAsync(true);
        await page.Locator(".card:not([hidden]) .tick").First.ClickAsync();
        await page.Locator(".card:not([hidden]) .tick").Nth(1).ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('.link').textContent.includes('2 entries kept here')");
        await context.SetOfflineAsync(false);
        await HandedOverAsync(page);
        await context.SetOfflineAsync(true);
        await page.Locator(".card:not([hidden]) [data-verdict=good]").ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('.link').textContent.includes('1 entry kept here')");
        await context.SetOfflineAsync(false);
        await HandedOverAsync(page);

        var (device, entries) = await LogAsync(page);
        Assert.Equal([1, 2, 3], entries.Select(entry => entry.GetProperty("sequence").GetInt32()));
        // Handing all of it over again, twice, changes nothing: the server confirms the same three.
        Assert.Equal(3, await HandOverAgainAsync(page, entries, device));
        Assert.Equal(3, await HandOverAgainAsync(page, entries, device));
    }

    [BrowserFact]
    public async Task An_amount_is_changed_in_two_taps()
    {
        await using var tablet = await OpenAsync();
        var page = tablet.Page;

        await page.Locator(".card:not([hidden]) .amount").First.ClickAsync();
        await page.Locator("dialog[open] [data-measure]").Last.ClickAsync();

        await page.Locator(".card:not([hidden]) .line.changed .poured").First.WaitForAsync();
        Assert.StartsWith("poured; spec ", await page.Locator(".card:not([hidden]) .line.changed .poured").First.TextContentAsync(), StringComparison.Ordinal);
        await HandedOverAsync(page);
        Assert.Empty(tablet.Troubles);
    }

    [BrowserFact]
    public async Task Keys_of_a_foot_pedal_turn_the_cards()
    {
        await using var tablet = await OpenAsync();
        var page = tablet.Page;
        var first = await page.Locator(".card:not([hidden]) h2").TextContentAsync();

        await page.Keyboard.PressAsync("PageDown");
        var second = await page.Locator(".card:not([hidden]) h2").TextContentAsync();
        await page.Keyboard.PressAsync("ArrowLeft");

        Assert.NotEqual(first, second);
        Assert.Equal(first, await page.Locator(".card:not([hidden]) h2").TextContentAsync());
    }

    [BrowserFact]
    public async Task Two_tablets_that_logged_offline_are_both_kept()
    {
        await using var one = await OpenAsync();
        await using var other = await OpenAsync();
        foreach (var page in new[] { one.Page, other.Page })
        {
            await page.Context.SetOfflineAsync(true);
            await page.Locator(".card:not([hidden]) .tick").First.ClickAsync();
            await page.WaitForFunctionAsync("() => document.querySelector('.link').textContent.includes('1 entry kept here')");
        }

        foreach (var page in new[] { one.Page, other.Page })
        {
            await page.Context.SetOfflineAsync(false);
            await HandedOverAsync(page);
        }

        var (first, firsts) = await LogAsync(one.Page);
        var (second, seconds) = await LogAsync(other.Page);
        Assert.NotEqual(first, second);
        Assert.Equal(1, await HandOverAgainAsync(one.Page, firsts, first));
        Assert.Equal(1, await HandOverAgainAsync(one.Page, seconds, second));
    }

    [BrowserFact]
    public async Task Once_opened_it_opens_again_without_the_server()
    {
        await using var tablet = await OpenAsync();
        var page = tablet.Page;
        await page.WaitForFunctionAsync("async () => navigator.serviceWorker.controller?.state === 'activated' && (await caches.keys()).length > 0 && (await (await caches.open((await caches.keys())[0])).match(location.href)) !== undefined");
        var name = await page.Locator(".card:not([hidden]) h2").TextContentAsync();

        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();

        await page.WaitForFunctionAsync("() => document.body.dataset.ready === 'true'");
        Assert.Equal(name, await page.Locator(".card:not([hidden]) h2").TextContentAsync());
        await page.Locator(".card:not([hidden]) .tick").First.ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('.link').textContent.includes('kept here')");
    }

    [BrowserFact]
    public async Task A_server_killed_in_the_middle_of_a_hand_over_takes_each_entry_once_when_it_is_back()
    {
        await using var tablet = await OpenAsync();
        var page = tablet.Page;
        // The server takes the entries, and its answer never arrives.
        await page.RouteAsync("**/entries", async route =>
        {
            await route.FetchAsync();
            await route.AbortAsync();
        });
        await page.Locator(".card:not([hidden]) .tick").First.ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('.link').textContent.includes('1 entry kept here')");
        await page.UnrouteAsync("**/entries");

        await HandedOverAsync(page);

        var (device, entries) = await LogAsync(page);
        Assert.Equal(1, await HandOverAgainAsync(page, entries, device));
    }

    [BrowserFact]
    public async Task The_names_and_amounts_are_tall_enough_to_read_at_two_metres_and_at_one()
    {
        await using var tablet = await OpenAsync();

        // An 11-inch tablet of 1180 by 820 shows about 5.2 px a millimetre across its 227 mm; capitals of these faces are about 0.67 of the type size.
        var sizes = await tablet.Page.EvaluateAsync<double[]>("() => ['h2', '.amount .first', '.name'].map((part) => parseFloat(getComputedStyle(document.querySelector('.card:not([hidden]) ' + part)).fontSize))");
        Assert.True(sizes[0] * 0.67 / 5.2 >= 8.7, $"name {sizes[0]}");
        Assert.True(sizes[1] * 0.67 / 5.2 >= 9.3, $"amounts {sizes[1]}");
        Assert.True(sizes[2] * 0.67 / 5.2 >= 5, $"ingredients {sizes[2]}");
    }

    [BrowserFact]
    public async Task What_is_no_log_is_refused()
    {
        await using var tablet = await OpenAsync();

        var answers = await tablet.Page.EvaluateAsync<int[]>($$"""
            async () => {
              const send = (body, type) => fetch('/bench/{{Gin}}/entries', { method: 'POST', headers: { 'Content-Type': type }, body }).then((answer) => answer.status);
              return [await send('[]', 'text/plain'), await send('{"a":', 'application/json'), await send('[{"device":"","sequence":0}]', 'application/json'), await send('x'.repeat(600000), 'application/json')];
            }
            """);

        Assert.Equal([415, 400, 400, 400], answers);
    }

    private async Task<Window> OpenAsync()
    {
        var window = await stage.OpenAsync(1180, 820);
        await window.Page.GotoAsync($"/bench/{Gin}");
        await window.Page.WaitForFunctionAsync("() => document.body.dataset.ready === 'true'");
        return window;
    }

    private static Task HandedOverAsync(IPage page) => page.WaitForFunctionAsync("() => document.querySelector('.link').textContent.endsWith('handed over.')");

    private static async Task<(string Device, JsonElement[] Entries)> LogAsync(IPage page)
    {
        var text = await page.EvaluateAsync<string>($$"""async () => { const { BenchQueue } = await import('/js/bench-queue.js'); return JSON.stringify(await (await BenchQueue.open('{{Gin}}')).all()); }""");
        var entries = JsonDocument.Parse(text).RootElement.EnumerateArray().ToArray();
        return (entries[0].GetProperty("device").GetString()!, entries);
    }

    private static Task<int> HandOverAgainAsync(IPage page, JsonElement[] entries, string device) => page.EvaluateAsync<int>(
        $$"""async (entries) => (await (await fetch('/bench/{{Gin}}/entries', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: entries })).json())['{{device}}']""",
        JsonSerializer.Serialize(entries));
}
